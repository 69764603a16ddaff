package fayline.flow.card.fit;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.flow.card.Caution;
import fayline.flow.card.Cautions;
import fayline.flow.card.PrintMark;
import fayline.flow.plan.Plan;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHeat;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.expand.Names;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.flow.result.fit.frame.WidthsResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeOutcome;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.space.PartMove;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Makes the card of a fit: what its readings, its joint and the plan say, told whole. */
public final class FitCardMaker {
    private FitCardMaker() {}

    /**
     * Makes the card of a fit.
     *
     * @param definition the definition
     * @param project what follows from it
     * @param plan who, where, when; may be of several projects
     * @param fit what follows from the fit's readings
     * @param widths what the widths of its frame amount to
     * @param sprung its frame clamped and let go, where it is told as beams
     */
    public static FitCard make(
            Definition definition,
            ProjectResult project,
            Plan plan,
            FitResult fit,
            WidthsResult widths,
            Optional<SprungResult> sprung) {
        Names names = new Names(definition);
        Fit f = fit.fit();
        Optional<Part> part = f.part().flatMap(p -> definition.parts().find(p));
        Optional<FitBond> bond = new BondOfFit(definition, project, plan).of(f);
        Optional<FitCard.Located> located = located(fit);
        return new FitCard(
                f.id(),
                f.name(),
                f.part().map(names::of).orElse(""),
                part.map(Part::hand).orElse(f.hand()),
                f.against().stream().map(names::of).toList(),
                "Revision " + definition.facts().revision()
                        + f.part()
                                .map(p ->
                                        ", mark " + PrintMark.of(definition, p).text())
                                .orElse(", definition " + definition.hash()),
                fit.now().map(n -> n.state()),
                fit.now().map(n -> n.temperatureDegC()).orElse(OptionalDouble.empty()),
                FitReasons.of(fit, located, bond, widths, sprung),
                fit.advice().flatMap(a -> setting(fit, a)),
                holds(fit),
                located,
                fit.assumed(),
                bond,
                CastBond.of(definition, project, fit),
                fit.advice().map(FitAdvice::shop),
                fit.advice().map(a -> readings(fit, a)).orElse(List.of()),
                widths.widths(),
                sprung.filter(s -> !fit.isSet()),
                cautions(f, bond));
    }

    private static Optional<FitCard.Setting> setting(FitResult fit, FitAdvice a) {
        return a.best()
                .found()
                .map(m -> new FitCard.Setting(m.move().inPlane(), a.pivot(), a.sentence(), told(fit, a, m)));
    }

    /** Where marked places go, of a flat part what brings it flush, and of a curved one the flush to see. */
    private static List<Phrase> told(FitResult fit, FitAdvice a, PartMove.Found m) {
        List<Phrase> all = new ArrayList<>(a.atMarks());
        a.flush()
                .ifPresent(f -> all.add(
                        Phrase.of("Flush: %s", flush(fit, f.minimax().move().inSpace()))));
        if (!m.flushes().isEmpty()) {
            all.add(Phrase.of(
                    "Flush then: %s",
                    Phrase.joined(
                            ", ",
                            m.flushes().stream()
                                    .map(f -> Phrase.of("%s %s", f.wanted().station(), Amount.mm(f.afterMm(), 1)))
                                    .toList())));
        }
        return all;
    }

    /** How to bring a flat part flush. */
    private static Phrase flush(FitResult fit, SpaceMove move) {
        List<Phrase> parts = new SpaceWords(fit.side(), Vector.ZERO, "").lift(move);
        return parts.isEmpty() ? Phrase.plain("it is flush as it lies") : Phrase.joined(", ", parts);
    }

    private static List<FitCard.Hold> holds(FitResult fit) {
        Optional<ShimResult> shims = fit.advice().flatMap(FitAdvice::shims);
        List<FitHolding.Point> points = fit.fit().holding().points();
        List<FitCard.Hold> all = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            int n = i;
            Station at = points.get(i).stop().contact();
            all.add(new FitCard.Hold(
                    at.id(),
                    at.at(),
                    nearest(fit.places(), at.at()),
                    shims.map(s -> OptionalDouble.of(s.exactMm().get(n))).orElse(OptionalDouble.empty()),
                    shims.flatMap(ShimResult::best).map(b -> b.stacks().get(n)),
                    OptionalDouble.empty()));
        }
        return all;
    }

    private static String nearest(Map<String, Station> places, Spot at) {
        return places.values().stream()
                .min(Comparator.comparingDouble((Station s) -> s.at().distanceMm(at))
                        .thenComparing(Station::id))
                .map(Station::id)
                .orElse("");
    }

    private static Optional<SchemeOutcome> chosen(FitResult fit) {
        Optional<SchemeComparison> schemes =
                fit.advice().flatMap(FitAdvice::schemes).or(fit::beforehand);
        return schemes.flatMap(c -> c.schemes().stream()
                .filter(s -> s.name().equals(fit.fit().holding().chosen()))
                .findFirst());
    }

    private static Optional<FitCard.Located> located(FitResult fit) {
        String name = fit.fit().holding().chosen();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        Optional<SchemeOutcome> outcome = chosen(fit);
        Optional<GapOdds> odds = outcome.flatMap(SchemeOutcome::odds);
        List<String> missing = new ArrayList<>();
        if (outcome.isEmpty()) {
            missing.add("gaps after a move");
        }
        outcome.ifPresent(o -> o.missing().stream()
                .map(m -> m.about().isEmpty() ? m.what() : m.what() + " (" + m.about() + ")")
                .forEach(missing::add));
        return Optional.of(new FitCard.Located(
                name,
                outcome.map(o -> o.stops().stream().map(s -> s.contact().id()).toList())
                        .orElse(List.of()),
                odds.map(o -> OptionalDouble.of(o.joint().probability())).orElse(OptionalDouble.empty()),
                odds.map(o -> o.worstStation().id()).orElse(""),
                missing));
    }

    private static List<FitCard.Reading> readings(FitResult fit, FitAdvice a) {
        Optional<PartMove.Found> best = a.best().found();
        Optional<List<Double>> expected = a.shims()
                .flatMap(ShimResult::best)
                .map(ShimResult.Choice::gapsMm)
                .or(a.best()::gapsMm);
        Set<String> deciding = new HashSet<>();
        best.ifPresent(m -> deciding.addAll(m.deciding()));
        chosen(fit)
                .flatMap(SchemeOutcome::odds)
                .ifPresent(o -> deciding.add(o.worstStation().id()));
        List<FitCard.Reading> all = new ArrayList<>();
        for (int i = 0; i < a.rows().size(); i++) {
            int n = i;
            FitRow row = a.rows().get(i);
            String id = row.station().id();
            all.add(new FitCard.Reading(
                    id,
                    fit.fit().station(id).map(FitStation::where).orElse(""),
                    a.shop().seenMm(n, row.gapMm()),
                    a.shop().seenMm(n, expected.map(g -> g.get(n)).orElse(row.gapMm())),
                    a.shop().seenMm(n, Math.max(row.lowerMm(), row.minimumMm().orElse(row.lowerMm()))),
                    a.shop().seenMm(n, row.upperMm()),
                    a.flushes().get(n),
                    deciding.contains(id)));
        }
        return all.stream()
                .sorted(Comparator.comparing((FitCard.Reading r) -> !r.decides()))
                .toList();
    }

    private static List<Caution> cautions(Fit fit, Optional<FitBond> bond) {
        List<Caution> all = new ArrayList<>();
        all.add(Cautions.get("clamp"));
        if (fit.heat().map(FitHeat::sheet).filter(s -> s.isAcrylic()).isPresent()) {
            all.add(Cautions.get("acrylic"));
        }
        bond.flatMap(FitBond::card).ifPresent(c -> all.addAll(c.cautions()));
        return all.stream().distinct().toList();
    }
}
