package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitStation;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.reading.StationGap;
import fayline.method.fitup.scheme.ReadGap;
import fayline.method.fitup.scheme.SchemeCalculator;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeQuestion;
import fayline.method.fitup.shim.IndexPoint;
import fayline.method.fitup.shim.ShimCalculator;
import fayline.method.fitup.shim.ShimQuestion;
import fayline.method.fitup.shim.ShimResult;
import fayline.method.fitup.space.FlushPlaneCalculator;
import fayline.method.fitup.space.FlushPlaneResult;
import fayline.method.fitup.space.FlushReading;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.PartMoveCalculator;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceReading;
import fayline.method.fitup.trim.TrimCalculator;
import fayline.method.fitup.trim.TrimQuestion;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.TrimRow;
import fayline.method.fitup.trim.TrimRules;
import fayline.method.fitup.trim.cut.CutPlan;
import fayline.method.fitup.trim.cut.CutPlanCalculator;
import fayline.method.fitup.trim.cut.CutPlanResult;
import fayline.method.fitup.trim.cut.CutSide;
import fayline.method.fitup.trim.cut.CutStation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** What to do at a state: move, shims, trim, scheme. */
final class Advice {
    /** Moves the quasi-random points of the joint chance; the same readings give the same chance. */
    static final long SEED = 20260303;

    private final Fit fit;
    private final FitPlaces places;
    private final Targets targets;
    private final Certainty certainty;
    private final HeldPoints held;

    Advice(Fit fit, FitPlaces places, Targets targets, Certainty certainty) {
        this.fit = fit;
        this.places = places;
        this.targets = targets;
        this.certainty = certainty;
        this.held = new HeldPoints(places);
    }

    /**
     * What to do.
     *
     * @param now the state
     * @param later states to come, which shift what is wanted
     * @param doubted those of them whose doubt is in the chances: all of them for what ends in the end, none for the next state
     */
    Optional<FitAdvice> at(StateReadings now, List<LaterState> later, List<LaterState> doubted) {
        List<FitRow> rows = targets.rows(now.stations(), now.temperatureDegC(), later);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        Set<String> ids = rows.stream().map(r -> r.station().id()).collect(Collectors.toSet());
        List<StationValue> read = now.stations().stream()
                .filter(v -> ids.contains(v.station().id()))
                .toList();
        List<Double> u = read.stream()
                .map(v -> v.gap().map(StationGap::wholeDeviationMm).orElse(0.0))
                .toList();
        List<OptionalDouble> reading = read.stream().map(certainty::readingMm).toList();
        ShopHeat shop = targets.growth().shop(rows, now.temperatureDegC());
        List<SpaceReading> flushes = targets.flushes(now.stations(), later);
        PartQuestion question = targets.question(rows, flushes, known(u, flushes));
        PartMove best = PartMoveCalculator.calculate(question);
        Spot pivot = places.middle();
        List<Finding> findings = new ArrayList<>();
        Optional<PartMove.Found> found = best.found();
        SpaceWords words = new SpaceWords(targets.side(), question.pivot(), Changes.MIDDLE);
        Optional<FlushPlaneResult> lies = best.curved() ? Optional.empty() : flush(flushed(now), pivot);
        boolean trims = best.status() == MoveStatus.NO_FIT || best.status() == MoveStatus.INFEASIBLE;
        Optional<TrimResult> trim =
                trims && !fit.cutting().forbidden() ? Optional.of(trim(rows, u, question)) : Optional.empty();
        findings.addAll(CurvedNotes.of(fit, places, trim.isPresent()));
        return Optional.of(new FitAdvice(
                now.state().id(),
                rows,
                pivot,
                Changes.MIDDLE,
                best,
                found.map(f -> words.sentence(f.move())).orElse(Phrase.NONE),
                found.map(f -> fit.marks().stream()
                                .map(m -> words.at(f.move(), m.place(), m.name()))
                                .toList())
                        .orElse(List.of()),
                new Ways(fit, places, words).of(question, best),
                lies,
                flushes(read, later, afterMm(flushed(now), best, lies)),
                fit.holding().points().stream().map(held::contact).toList(),
                found.flatMap(f -> shims(rows, shop, f, findings)),
                trim,
                trim.flatMap(t -> cut(t, rows, u)),
                found.flatMap(f -> schemes(new Expected(rows, f.gapsMm(), reading, shop.doubts()), doubted, pivot)),
                shop,
                reading,
                findings));
    }

    /** How sure each reading is, gaps then flushes; nothing where that is not known of every one. */
    private List<Double> known(List<Double> gapsMm, List<SpaceReading> flushes) {
        List<Double> all = new ArrayList<>(gapsMm);
        flushes.forEach(f -> all.add(certainty.readingMm().orElse(0)));
        return all.stream().allMatch(x -> x > 0) ? all : List.of();
    }

    /** The schemes for a part that is set to its nominal gaps. */
    Optional<SchemeComparison> beforehand(List<LaterState> later) {
        List<FitRow> rows = targets.nominalRows(later);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble once = certainty.readingMm();
        List<OptionalDouble> reading = rows.stream().map(r -> once).toList();
        return schemes(
                new Expected(rows, rows.stream().map(FitRow::gapMm).toList(), reading, List.of()),
                later,
                places.middle());
    }

    /** The flush after the move at each station where it was read and the move tells it. */
    private static Map<String, Double> afterMm(
            List<FlushReading> read, PartMove best, Optional<FlushPlaneResult> lies) {
        Map<String, Double> all = new HashMap<>();
        best.found().ifPresent(f -> f.flushes().forEach(x -> all.put(x.wanted().station(), x.afterMm())));
        lies.ifPresent(l -> {
            for (int i = 0; i < read.size(); i++) {
                all.put(read.get(i).station(), l.minimax().flushMm().get(i));
            }
        });
        return all;
    }

    private List<StationFlush> flushes(List<StationValue> read, List<LaterState> later, Map<String, Double> afterMm) {
        double tolerance = Targets.mm(fit.wanted().flushTolerance());
        List<StationFlush> all = new ArrayList<>();
        for (StationValue v : read) {
            String id = v.station().id();
            double nominal =
                    targets.flushMm(Objects.requireNonNull(places.stations().get(id), id), later);
            Double after = afterMm.get(id);
            all.add(new StationFlush(
                    id,
                    v.flushMm(),
                    after == null ? OptionalDouble.empty() : OptionalDouble.of(after),
                    nominal - tolerance,
                    nominal + tolerance));
        }
        return all;
    }

    private static Optional<FlushPlaneResult> flush(List<FlushReading> readings, Spot pivot) {
        return readings.size() < 3 ? Optional.empty() : Optional.of(FlushPlaneCalculator.calculate(readings, pivot));
    }

    private List<FlushReading> flushed(StateReadings now) {
        double nominal = Targets.mm(fit.wanted().flush());
        List<FlushReading> readings = new ArrayList<>();
        for (StationValue v : now.stations()) {
            Station at = places.stations().get(v.station().id());
            if (at != null && v.flushMm().isPresent()) {
                readings.add(
                        FlushReading.of(v.station().id(), at.at(), v.flushMm().getAsDouble(), nominal));
            }
        }
        return readings;
    }

    /**
     * Shims at a move. What of it leads out of the plane is made by hand and eye along the surface; it is taken from every clearance
     * and gap first, so that shims are chosen for what is left, in the plane.
     */
    private Optional<ShimResult> shims(List<FitRow> rows, ShopHeat shop, PartMove.Found found, List<Finding> findings) {
        List<FitRow> seen = new ArrayList<>();
        List<FitRow> left = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            FitRow r = rows.get(i);
            double lifted = HeldPoints.liftedMm(r.station(), found.move(), found.pivot());
            seen.add(r.withGap(shop.seenMm(i, r.gapMm()) - lifted));
            left.add(r.withGap(r.gapMm() - lifted));
        }
        List<IndexPoint> points = new ArrayList<>();
        for (FitHolding.Point p : fit.holding().points()) {
            Station at = held.contact(p);
            OptionalDouble clearance = p.clearanceMm().isPresent()
                    ? OptionalDouble.of(
                            p.clearanceMm().getAsDouble() - HeldPoints.liftedMm(at, found.move(), found.pivot()))
                    : gapNear(at, seen);
            if (clearance.isEmpty()) {
                findings.add(new Finding(
                        Severity.NOTE,
                        p.stop().id(),
                        "No gap was read near index point " + p.stop().id()
                                + ", so its shim is not known: read a station there or give its clearance.",
                        "geometry"));
                return Optional.empty();
            }
            points.add(IndexPoint.shim(at, clearance.getAsDouble()));
        }
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(ShimCalculator.calculate(new ShimQuestion(
                        points,
                        found.move().inPlane(),
                        places.middle(),
                        fit.holding().shims(),
                        left)));
    }

    /** The gap at a place from the two nearest stations that look the same way, on the straight line between them. */
    private static OptionalDouble gapNear(Station place, List<FitRow> rows) {
        List<Station> near =
                HeldPoints.alike(place, rows.stream().map(FitRow::station).toList());
        List<Double> gaps = near.stream()
                .flatMap(s -> rows.stream().filter(r -> r.station().equals(s)).limit(1))
                .map(FitRow::gapMm)
                .toList();
        if (gaps.size() < 2) {
            return gaps.stream().mapToDouble(g -> g).findFirst();
        }
        double share = HeldPoints.share(place, near.get(0), near.get(1));
        return OptionalDouble.of((1 - share) * gaps.get(0) + share * gaps.get(1));
    }

    private TrimResult trim(List<FitRow> rows, List<Double> u, PartQuestion question) {
        List<String> ids = rows.stream().map(r -> r.station().id()).toList();
        List<Double> tributary = places.tributaryMm(ids);
        double most = fit.cutting().mostMm().orElse(Double.POSITIVE_INFINITY);
        List<TrimRow> trimmed = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            trimmed.add(new TrimRow(rows.get(i), tributary.get(i), most, u.get(i)));
        }
        List<String> edges = fit.cutting().edges().isEmpty()
                ? rows.stream().map(FitRow::edge).distinct().toList()
                : fit.cutting().edges();
        return TrimCalculator.calculate(new TrimQuestion(
                trimmed,
                places.pairs(ids),
                places.middle(),
                fit.room(),
                TrimRules.usual(edges),
                question.curved() ? Optional.of(question) : Optional.empty()));
    }

    private Optional<CutPlanResult> cut(TrimResult trim, List<FitRow> rows, List<Double> u) {
        if (places.outline().isEmpty() || trim.cut().isEmpty()) {
            return Optional.empty();
        }
        List<CutStation> stations = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            String id = rows.get(i).station().id();
            stations.add(new CutStation(
                    id,
                    rows.get(i).edge(),
                    places.arcMm(id),
                    trim.cut().get().depthsMm().get(i),
                    u.get(i)));
        }
        Map<String, CutSide> sides = new HashMap<>();
        places.edges().forEach(e -> sides.put(e.name(), fit.cutting().from()));
        return Optional.of(CutPlanCalculator.calculate(new CutPlan(
                stations,
                places.edges(),
                places.outline().get().perimeterMm(),
                sides,
                fit.cutting().leaveOnMm(),
                uncut())));
    }

    /** Edges that may not be cut, where the definition names those that may. */
    private Set<String> uncut() {
        if (fit.cutting().edges().isEmpty()) {
            return Set.of();
        }
        Set<String> all = new HashSet<>();
        places.edges().stream()
                .map(EdgeRun::name)
                .filter(e -> !fit.cutting().edges().contains(e))
                .forEach(all::add);
        return all;
    }

    /** Gaps as they are expected, how sure each was read, and what makes all of them doubtful. */
    private record Expected(
            List<FitRow> rows, List<Double> gapsMm, List<OptionalDouble> readingMm, List<GapSource> doubts) {}

    private Optional<SchemeComparison> schemes(Expected expected, List<LaterState> doubted, Spot pivot) {
        if (fit.holding().schemes().isEmpty()) {
            return Optional.empty();
        }
        List<ReadGap> gaps = new ArrayList<>();
        for (int i = 0; i < expected.rows().size(); i++) {
            FitRow r = expected.rows().get(i);
            gaps.add(new ReadGap(
                    r.station(),
                    expected.gapsMm().get(i),
                    r.lowerMm(),
                    r.upperMm(),
                    expected.readingMm().get(i)));
        }
        return Optional.of(SchemeCalculator.calculate(new SchemeQuestion(
                pivot,
                gaps,
                certainty.sharedMm(),
                doubted.stream().map(LaterState::doubt).toList(),
                expected.doubts(),
                fit.holding().schemes().stream().map(held::held).toList(),
                certainty.allowed(),
                SEED)));
    }

    /** Warns by name where a gap is right now but a state to come will spoil it. */
    List<Finding> tooEarly(StateReadings now, List<LaterState> later) {
        List<Finding> warnings = new ArrayList<>();
        for (LaterState l : later) {
            double most = 0;
            String where = "";
            for (FitStation s : fit.stations()) {
                Station at = places.stations().get(s.id());
                double change = at == null ? l.gapMm() : Targets.changeMm(l, at);
                if (Math.abs(change) > Math.abs(most)) {
                    most = change;
                    where = s.id();
                }
            }
            if (most != 0) {
                warnings.add(new Finding(
                        Severity.CAUTION,
                        l.state().id(),
                        Phrase.of(
                                "Do not make the gap perfect now: \"%s\" is still to come and changes it by %s at"
                                        + " station %s (%s). The targets here allow for it.",
                                l.state().name(), Amount.signedMm(most, 1), where, l.origin()),
                        l.learned() ? "own readings" : "definition"));
            }
        }
        if (now.read() == 0) {
            warnings.add(new Finding(Severity.NOTE, now.state().id(), "No gap is read in this state yet.", "readings"));
        }
        return warnings;
    }
}
