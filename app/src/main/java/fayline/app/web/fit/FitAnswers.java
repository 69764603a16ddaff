package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.basis.units.Length;
import fayline.basis.units.UnitSystem;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateReadings;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Reach;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.shim.ShimStack;
import fayline.method.fitup.space.FlushMove;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.SpaceMotionWords;
import fayline.method.fitup.trim.TrimResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words the answer: move, shims, trim. */
final class FitAnswers {
    private static final double LEAST_MM = 0.05;

    private FitAnswers() {}

    /** The best move in a line; empty where there is none. */
    static String move(Sight sight, FitResult r) {
        return r.advice()
                .filter(a -> a.best().found().isPresent())
                .map(a -> sight.say(a.sentence()))
                .orElse("");
    }

    /** What is wrong with a fit, short. */
    static List<String> troubles(Sight sight, FitResult r) {
        List<String> all = new ArrayList<>();
        r.advice().filter(a -> !fits(a)).ifPresent(a -> {
            all.add(verdict(sight, a));
            if (!a.best().outside().isEmpty()) {
                all.add("Outside after the best move: "
                        + a.best().outside().stream()
                                .map(o -> o.wanted().named())
                                .collect(Collectors.joining(", ")));
            }
        });
        List<String> suspects = r.now()
                .map(n -> n.stations().stream()
                        .filter(s -> !s.suspects().isEmpty())
                        .map(s -> s.station().id())
                        .toList())
                .orElse(List.of());
        if (!suspects.isEmpty()) {
            all.add("Read again: " + String.join(", ", suspects));
        }
        return all;
    }

    static FitAnswer of(Sight sight, FitResult r, FitAdvice a, boolean assume) {
        Optional<PartMove.Found> best = a.best().found();
        List<Finding> told = new ArrayList<>(a.findings());
        told.addAll(a.best().findings());
        boolean worded = a.best().status() == MoveStatus.NO_FIT;
        List<String> findings = told.stream()
                .filter(f ->
                        !(worded && f.severity() == Severity.STOP && f.about().equals("move")))
                .map(f -> f.sentence(sight.format().system()))
                .distinct()
                .toList();
        return new FitAnswer(
                state(r, a.state()),
                fits(a),
                verdict(sight, a) + (a.shop().matters() ? " " + wanted(sight, a) : ""),
                FitSeen.of(sight, a),
                outside(sight, a.best().outside()),
                move(sight, r),
                best.map(m -> turn(sight, r, m)).orElse(""),
                a.atMarks().stream().map(sight::say).toList(),
                a.flush().map(f -> flush(sight, f.minimax().move(), r)).orElse(""),
                best.map(m -> flushes(sight, m)).orElse(List.of()),
                a.shims().map(s -> shims(sight, a, s)).orElseGet(() -> FitSeen.spacers(sight, r, a)),
                a.shims().isPresent() ? "shims" : "gaps",
                a.shims().map(s -> shimWords(sight, s)).orElseGet(() -> FitSeen.spacerWords(r, a)),
                trim(sight, a),
                FitTemplatePage.links(r, a, assume),
                a.schemes()
                        .map(s -> FitSchemes.rows(r.fit(), s, sight, a.rows().size()))
                        .orElse(List.of()),
                r.missing(),
                r.assumed().stream().map(sight::say).toList(),
                a.schemes().map(s -> FitSchemes.helps(sight, s)).orElse(List.of()),
                findings);
    }

    private static String state(FitResult r, String id) {
        return r.states().stream()
                .map(StateReadings::state)
                .filter(s -> s.id().equals(id))
                .map(s -> s.name())
                .findFirst()
                .orElse(id);
    }

    private static boolean fits(FitAdvice a) {
        return a.best().status() == MoveStatus.OK;
    }

    private static String verdict(Sight sight, FitAdvice a) {
        if (a.best().status() == MoveStatus.NO_FIT) {
            int out = a.best().outside().size();
            return "No: moving alone does not do it. " + out + " of " + asked(a)
                    + (out == 1 ? " stays outside." : " stay outside.");
        }
        if (!fits(a) || a.best().found().isEmpty()) {
            return "No move is given: see below why.";
        }
        List<Double> gaps = a.best().found().get().gapsMm();
        int worst = worst(a, gaps);
        FitRow row = a.rows().get(worst);
        List<PartMove.Flush> flushes = a.best().found().get().flushes();
        boolean lies = a.rows().stream().allMatch(x -> x.gapMm() >= x.lowerMm() && x.gapMm() <= x.upperMm())
                && flushes.stream().allMatch(f -> f.wanted().beyondMm(f.readMm()) == 0);
        return (lies
                        ? "It is in tolerance as it lies. Moved, the worst gap will be "
                        : "Yes, if moved: the worst gap will be ")
                + FitWords.length(sight, gaps.get(worst)) + " at "
                + row.station().id() + " ("
                + needs(sight, row) + ")" + worstFlush(sight, flushes) + ".";
    }

    /** How many readings must come inside. */
    private static String asked(FitAdvice a) {
        int flushes = a.best().found().map(f -> f.flushes().size()).orElse(0);
        return flushes == 0 ? a.rows().size() + " stations" : a.rows().size() + flushes + " gaps and flushes";
    }

    private static String worstFlush(Sight sight, List<PartMove.Flush> flushes) {
        return flushes.stream()
                .max(Comparator.comparingDouble(f ->
                        f.wanted().weight() * Math.abs(f.afterMm() - f.wanted().nominalMm())))
                .map(f -> ", the worst flush " + FitWords.length(sight, f.afterMm()) + " at "
                        + f.wanted().station() + " (" + needs(sight, f.wanted()) + ")")
                .orElse("");
    }

    private static String turn(Sight sight, FitResult r, PartMove.Found m) {
        return Stream.of(
                        MoveWords.turnAcross(m.move().inPlane().turnRad(), Reach.of(r.placed())),
                        SpaceMotionWords.oneTurn(m.move(), m.pivot()))
                .filter(p -> !p.isEmpty())
                .map(sight::say)
                .collect(Collectors.joining(" "));
    }

    /** The flushes of a curved part, which come with the move. */
    private static List<FitAnswer.FlushRow> flushes(Sight sight, PartMove.Found m) {
        return m.flushes().stream()
                .map(f -> new FitAnswer.FlushRow(
                        f.wanted().station(),
                        FitWords.length(sight, f.readMm()),
                        FitWords.length(sight, f.afterMm()),
                        sight.say(Phrase.of(
                                "%s to %s",
                                Amount.bareMm(f.wanted().lowerMm(), 1),
                                Amount.mm(f.wanted().upperMm(), 1)))))
                .toList();
    }

    /** At which temperature that holds. */
    private static String wanted(Sight sight, FitAdvice a) {
        return sight.say(Phrase.of(
                "That is at %s, where the gaps are wanted.",
                Amount.degC(a.shop().soughtDegC().orElseThrow())));
    }

    /** The row whose gap is worst, by its weight. */
    static int worst(FitAdvice a, List<Double> gapsMm) {
        int worst = 0;
        for (int i = 1; i < gapsMm.size(); i++) {
            if (off(a.rows().get(i), gapsMm.get(i)) > off(a.rows().get(worst), gapsMm.get(worst))) {
                worst = i;
            }
        }
        return worst;
    }

    private static double off(FitRow row, double gapMm) {
        return row.weight() * Math.abs(gapMm - row.nominalMm());
    }

    static String needs(Sight sight, FitRow row) {
        return needs(sight, row.lowerMm(), row.upperMm());
    }

    private static String needs(Sight sight, Wanted w) {
        return needs(sight, w.lowerMm(), w.upperMm());
    }

    private static String needs(Sight sight, double lowerMm, double upperMm) {
        return "needs " + FitWords.length(sight, lowerMm) + " to " + FitWords.length(sight, upperMm);
    }

    static List<String> outside(Sight sight, List<MoveReport.Outside> outside) {
        return outside.stream()
                .map(o -> o.wanted().named() + " ends at " + FitWords.length(sight, o.valueMm()) + " ("
                        + needs(sight, o.wanted()) + "): "
                        + (Math.abs(o.beyondMm()) < LEAST_MM ? "just" : FitWords.length(sight, Math.abs(o.beyondMm())))
                        + beyond(o))
                .toList();
    }

    private static String beyond(MoveReport.Outside o) {
        boolean below = o.beyondMm() < 0;
        return o.wanted().flush() ? below ? " too low" : " too proud" : below ? " too tight" : " too wide";
    }

    /** How to bring a flat part flush. */
    private static String flush(Sight sight, FlushMove m, FitResult r) {
        List<Phrase> parts = new SpaceWords(r.side(), Vector.ZERO, "").lift(m.inSpace());
        return parts.isEmpty() ? "It is flush as it lies." : sight.say(Phrase.joined(", ", parts));
    }

    private static List<FitAnswer.Shim> shims(Sight sight, FitAdvice a, ShimResult s) {
        List<FitAnswer.Shim> all = new ArrayList<>();
        for (int i = 0; i < s.exactMm().size(); i++) {
            int at = i;
            double exact = s.exactMm().get(i);
            all.add(new FitAnswer.Shim(
                    a.points().get(i).id(),
                    exact < 0
                            ? FitWords.length(sight, -exact) + " off: the stop is in the way"
                            : FitWords.length(sight, exact),
                    s.best().map(b -> stack(sight, b.stacks().get(at))).orElse("")));
        }
        return all;
    }

    private static String stack(Sight sight, ShimStack stack) {
        if (sight.format().system() == UnitSystem.METRIC || stack.piecesMm().isEmpty()) {
            return stack.words();
        }
        return thou(stack.heightMm()) + " thou = " + stack.sum(FitAnswers::thou);
    }

    private static String thou(double mm) {
        return String.format(Locale.ROOT, "%.0f", Length.ofMillimetres(mm).thou());
    }

    private static List<String> shimWords(Sight sight, ShimResult s) {
        List<String> all = new ArrayList<>();
        s.best()
                .ifPresent(b -> all.add("With these pieces the worst gap is "
                        + FitWords.length(sight, b.worstDeviation()) + " from nominal."
                        + s.rounded()
                                .filter(r -> r.worstDeviation() > b.worstDeviation() + LEAST_MM)
                                .map(r -> " Each point rounded by itself would leave "
                                        + FitWords.length(sight, r.worstDeviation()) + ".")
                                .orElse("")));
        all.addAll(sight.say(s.findings()));
        return all;
    }

    private static List<String> trim(Sight sight, FitAdvice a) {
        List<String> all = new ArrayList<>();
        if (a.cut().isPresent()) {
            all.add("Take off: " + sight.say(a.cut().get().words()) + ".");
            all.addAll(sight.say(a.cut().get().findings()));
        } else if (a.trim().flatMap(TrimResult::cut).isPresent()) {
            List<Double> depths = a.trim().flatMap(TrimResult::cut).get().depthsMm();
            List<String> each = new ArrayList<>();
            for (int i = 0; i < depths.size(); i++) {
                if (depths.get(i) > 0) {
                    each.add(FitWords.length(sight, depths.get(i)) + " at station "
                            + a.rows().get(i).station().id());
                }
            }
            all.add("Take off " + String.join(", ", each)
                    + ". The outline is not drawn, so there is no cut line and no template.");
        }
        // a note only says the area again
        a.trim()
                .ifPresent(t -> t.findings().stream()
                        .filter(f -> f.severity() != Severity.NOTE)
                        .forEach(f -> all.add(f.sentence(sight.format().system()))));
        return all.stream().distinct().toList();
    }
}
