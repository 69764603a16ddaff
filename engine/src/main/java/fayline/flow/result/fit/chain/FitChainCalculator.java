package fayline.flow.result.fit.chain;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.ChainRemedy;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitGauge;
import fayline.flow.project.fit.FitStation;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainCalculator;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.DatumFit;
import fayline.method.fitup.chain.DatumFitCalculator;
import fayline.method.fitup.chain.DatumMark;
import fayline.method.fitup.chain.Link;
import fayline.method.fitup.chain.Placement;
import fayline.method.fitup.chain.correct.Correction;
import fayline.method.fitup.chain.correct.CorrectionCalculator;
import fayline.method.fitup.chain.correct.CorrectionResult;
import fayline.method.fitup.chain.correct.Neighbour;
import fayline.method.fitup.chain.correct.Remedy;
import fayline.method.fitup.chain.correct.RemedyCalculator;
import fayline.method.fitup.chain.correct.RemedyResult;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.Missing;
import fayline.method.fitup.scheme.Scheme;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What follows from a chain and the readings where it ends. */
public final class FitChainCalculator {
    /** Moves the quasi-random points of the joint chance; the same readings give the same chance. */
    private static final long SEED = 20260303;

    private static final double STRAIGHT_RAD = 1e-3;
    private static final String PRACTICE = "common practice, no source";

    private final FitChain chain;
    private final FitResult end;
    private final FitChainQuestion question;
    private final List<String> missing = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private FitChainCalculator(FitChainQuestion question) {
        this.question = question;
        this.chain = question.chain();
        this.end = question.end();
    }

    /** Answers the question. */
    public static FitChainResult calculate(FitChainQuestion question) {
        return new FitChainCalculator(question).result();
    }

    private FitChainResult result() {
        boolean read = end.advice().isPresent();
        List<FitRow> rows = end.advice().map(FitAdvice::rows).orElseGet(this::wanted);
        if (rows.isEmpty()) {
            findings.add(new Finding(
                    Severity.NOTE,
                    chain.id(),
                    "Where the stations of " + end.fit().name()
                            + " lie is not known: give each its place, or the fit its outline.",
                    "geometry"));
            return new FitChainResult(
                    chain,
                    end,
                    rows,
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    findings);
        }
        Spot middle = Station.middle(rows.stream().map(FitRow::station).toList());
        Chain asked = asked(rows, middle);
        ChainResult spread = ChainCalculator.calculate(asked);
        spread.missing().stream().map(FitChainCalculator::words).forEach(missing::add);
        spread.findings().stream()
                .filter(f -> !f.about().equals("chance") && !f.about().equals("assumed"))
                .filter(f -> missing.isEmpty() || f.severity() != Severity.NOTE)
                .forEach(findings::add);
        List<Neighbour> neighbours = chain.neighbours().stream()
                .map(n -> new Neighbour(n.name(), middle, n.room()))
                .filter(n -> asked.stations().stream().anyMatch(s -> s.against().equals(n.name())))
                .toList();
        boolean done = chain.links().stream().allMatch(ChainLink::done);
        Optional<CorrectionResult> correction = read && !(done && neighbours.isEmpty())
                ? Optional.of(CorrectionCalculator.calculate(new Correction(asked, neighbours)))
                : Optional.empty();
        correction.ifPresent(c -> findings.addAll(c.findings()));
        Optional<RemedyResult> remedies = read && done ? Optional.of(remedies(rows, middle)) : Optional.empty();
        if (done) {
            findings.add(new Finding(
                    Severity.NOTE,
                    chain.id(),
                    "Every link is bonded: what is left is to trim, build up, fill, hang it anew or make it again.",
                    PRACTICE));
        }
        return new FitChainResult(
                chain,
                end,
                rows,
                read,
                Optional.of(spread),
                correction,
                correction
                        .flatMap(CorrectionResult::chosen)
                        .map(w -> told(asked, w, middle))
                        .orElse(List.of()),
                remedies,
                missing.stream().distinct().toList(),
                spread.assumed().stream().map(Assumption::words).toList(),
                findings);
    }

    /** The wanted gaps as if they were read. */
    private List<FitRow> wanted() {
        List<FitRow> rows = new ArrayList<>();
        Fit fit = end.fit();
        for (FitStation s : fit.stations()) {
            Station at = end.places().get(s.id());
            if (at != null) {
                double gap = s.gap().orElse(fit.wanted().gap()).value().millimetres();
                double off = s.gapTolerance()
                        .orElse(fit.wanted().gapTolerance())
                        .value()
                        .millimetres();
                rows.add(FitRow.of(at, gap, gap - off, gap, gap + off));
            }
        }
        return rows;
    }

    private Chain asked(List<FitRow> rows, Spot middle) {
        Fit fit = end.fit();
        OptionalDouble reading = fit.gauge().map(FitGauge::deviationMm).orElse(OptionalDouble.empty());
        OptionalDouble shared = fit.gauge().map(FitGauge::sharedMm).orElse(OptionalDouble.empty());
        String on = fit.part().orElse(chain.links().get(0).part());
        String first = fit.against().isEmpty()
                ? chain.links().get(chain.links().size() - 1).carrier()
                : fit.against().get(0);
        List<ChainStation> stations = rows.stream()
                .map(r -> new ChainStation(
                        r,
                        on,
                        fit.station(r.station().id())
                                .map(FitStation::against)
                                .filter(a -> !a.isEmpty())
                                .orElse(first),
                        reading))
                .toList();
        Set<Assumption> allowed = question.assume() ? EnumSet.allOf(Assumption.class) : Set.of();
        return new Chain(chain.links().stream().map(l -> link(l, middle)).toList(), stations, shared, allowed, SEED);
    }

    private Link link(ChainLink l, Spot middle) {
        Optional<DatumFit> laid = l.marks().isEmpty() ? Optional.empty() : Optional.of(laid(l));
        Placement placement = laid.map(DatumFit::placement).orElse(l.placement());
        boolean sure = l.marks().stream().allMatch(m -> m.deviationMm().isPresent());
        return new Link(
                l.name(),
                l.part(),
                l.carrier(),
                l.pivot().orElseGet(() -> placement.toBench(middle)),
                scheme(l),
                placement,
                laid.filter(f -> sure),
                !l.done(),
                l.room());
    }

    private DatumFit laid(ChainLink l) {
        List<DatumMark> marks = new ArrayList<>();
        boolean sure = l.marks().stream().allMatch(m -> m.deviationMm().isPresent());
        for (ChainLink.Mark m : l.marks()) {
            if (m.deviationMm().isEmpty()) {
                missing.add("how sure mark " + m.name() + " is found (" + l.name() + ")");
            }
            double u = sure ? m.deviationMm().orElse(1) : 1;
            marks.add(new DatumMark(m.name(), m.bench(), m.place(), u, u));
        }
        return DatumFitCalculator.calculate(marks);
    }

    private Scheme scheme(ChainLink l) {
        List<Scheme> known = l.schemeOf()
                .flatMap(f -> question.fits().find(f))
                .map(f -> f.holding().schemes())
                .orElse(l.holding().schemes());
        String name = l.holding().chosen();
        return known.stream()
                .filter(s -> name.isEmpty() || s.name().equals(name))
                .findFirst()
                .orElse(Scheme.of(name, List.of()));
    }

    private List<FitChainResult.MoveTold> told(Chain asked, CorrectionResult.Way way, Spot middle) {
        List<FitChainResult.MoveTold> all = new ArrayList<>();
        for (CorrectionResult.Part p : way.moves()) {
            Optional<Link> link = asked.links().stream()
                    .filter(l -> l.name().equals(p.name()))
                    .findFirst();
            Placement placement = link.map(Link::placement).orElse(Placement.SAME);
            Spot pivot = link.map(Link::finalPivot).orElse(middle);
            Move onAirframe = placement.toFinal(p.move());
            Phrase about = pivot.distanceMm(middle) < 1
                    ? Phrase.plain("the middle of the stations")
                    : Phrase.of("the place x %s, y %s", Amount.placeMm(pivot.xMm(), 0), Amount.placeMm(pivot.yMm(), 0));
            all.add(new FitChainResult.MoveTold(
                    p.name(),
                    new MoveWords(end.side(), pivot, about).sentence(onAirframe),
                    Math.abs(placement.turnRad()) < STRAIGHT_RAD
                            ? Phrase.NONE
                            : Phrase.of(
                                    "on the bench: %s along its x, %s along its y",
                                    Amount.signedMm(p.move().dxMm(), 2),
                                    Amount.signedMm(p.move().dyMm(), 2))));
        }
        return all;
    }

    private RemedyResult remedies(List<FitRow> rows, Spot middle) {
        List<String> ids = rows.stream().map(r -> r.station().id()).toList();
        return RemedyCalculator.calculate(
                rows, middle, chain.remedies().stream().map(r -> remedy(r, ids)).toList());
    }

    private static Remedy remedy(ChainRemedy r, List<String> ids) {
        Map<String, Double> most = new HashMap<>();
        Remedy.Kind kind = switch (r.kind()) {
            case TRIM -> Remedy.Kind.TRIM;
            case BUILD_UP -> Remedy.Kind.BUILD_UP;
            case FILL -> Remedy.Kind.FILL;
            case RE_HANG -> Remedy.Kind.REHANG;
            case REMAKE -> Remedy.Kind.REMAKE;
        };
        if (kind != Remedy.Kind.REHANG && kind != Remedy.Kind.REMAKE) {
            ids.stream().filter(i -> r.at().isEmpty() || r.at().contains(i)).forEach(i -> most.put(i, r.limitMm()));
        }
        return new Remedy(
                r.name(),
                kind,
                r.hours(),
                most,
                kind == Remedy.Kind.REHANG ? r.room() : Optional.empty(),
                kind == Remedy.Kind.REMAKE ? r.limitMm() : 0);
    }

    private static String words(Missing m) {
        return m.about().isEmpty() ? m.what() : m.what() + " (" + m.about() + ")";
    }
}
