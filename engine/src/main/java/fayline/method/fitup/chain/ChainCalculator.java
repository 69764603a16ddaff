package fayline.method.fitup.chain;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.SemidefiniteFactor;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.after.MoveCovariance;
import fayline.method.fitup.chain.ChainResult.StationShares;
import fayline.method.fitup.odds.ExpectedGap;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapOddsCalculator;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.odds.GapSpread;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.GapDoubts;
import fayline.method.fitup.scheme.Missing;
import fayline.method.fitup.scheme.SchemeMotion;
import fayline.method.fitup.scheme.SchemeMotionCalculator;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Adds up a chain of bonds: each link's part may be off by its scheme and by the marks that carried its readings; every gap that
 * lies beyond the link feels that motion, carried rigidly to its station. Independent links add their variances [jcgm100], and so
 * does what is not known of states to come, at each station for itself. A settled link adds nothing: the readings hold its errors.
 */
public final class ChainCalculator {
    private final Chain chain;
    private final List<GapSource> sources = new ArrayList<>();
    private final List<Missing> missing = new ArrayList<>();
    private final List<Assumption> assumed = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final double[] shift;
    private final SharedMarks marks;
    private final List<SharedMarks.Shared> shared = new ArrayList<>();
    private final GapDoubts doubts;
    private boolean held = true;

    private ChainCalculator(Chain chain) {
        this.chain = chain;
        this.shift = new double[chain.stations().size()];
        this.marks = new SharedMarks(chain);
        this.missing.addAll(chain.missing());
        this.doubts = new GapDoubts(
                chain.stations().stream().map(ChainStation::id).toList(),
                chain.stations().stream().map(ChainStation::readingMm).toList(),
                chain.commonReadingMm(),
                chain.later(),
                chain.besides(),
                chain.assumed());
    }

    /** Adds it up. */
    public static ChainResult calculate(Chain chain) {
        return new ChainCalculator(chain).result();
    }

    private ChainResult result() {
        for (int k = 0; k < chain.links().size(); k++) {
            if (!chain.links().get(k).settled()) {
                scheme(k);
                marks(k);
            }
        }
        shared.addAll(marks.sources((k, move) ->
                carried(k, move, chain.links().get(k).carried().orElseThrow().middle())));
        shared.forEach(c -> sources.add(c.source()));
        missing.addAll(doubts.missing());
        assumed.addAll(doubts.assumed());
        List<ExpectedGap> gaps = gaps();
        sources.addAll(doubts.sources());
        List<Assumption> once = assumed.stream().distinct().toList();
        once.forEach(a -> findings.add(
                new Finding(Severity.CAUTION, "assumed", Phrase.of("Assumed: %s", a.words()), "rigid-body geometry")));
        if (!missing.isEmpty() || !held) {
            silent();
            return new ChainResult(
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    missing,
                    once,
                    dependence(),
                    findings);
        }
        GapSpread spread = new GapSpread(gaps, sources);
        GapOdds odds = doubts.apart(GapOddsCalculator.calculate(spread, chain.seed()));
        List<StationShares> shares = new ArrayList<>();
        for (int i = 0; i < gaps.size(); i++) {
            shares.add(shares(spread, i));
        }
        Optional<String> spender = spender(shares.get(odds.worst()));
        return new ChainResult(
                Optional.of(spread), Optional.of(odds), shares, spender, missing, once, dependence(), findings);
    }

    /** Which bonds count as one in something, and that all else counts as independent. */
    private List<Finding> dependence() {
        long open = chain.links().stream().filter(l -> !l.settled()).count();
        if (open < 2) {
            return List.of();
        }
        List<Finding> all = new ArrayList<>();
        for (String mark : marks.names()) {
            all.add(new Finding(
                    Severity.NOTE,
                    mark,
                    "Mark " + mark + " lays more than one bench: its error counts once, for all of them together.",
                    "[jcgm100] 5.2"));
        }
        all.add(new Finding(
                Severity.NOTE,
                "bonds",
                (marks.names().isEmpty() ? "The bonds are" : "In all else the bonds are")
                        + " counted as independent of each other: they name no mark in common"
                        + (marks.names().isEmpty() ? "." : " but those."),
                "common practice, no source"));
        return all;
    }

    private void silent() {
        if (!missing.isEmpty()) {
            note(
                    Severity.NOTE,
                    "chance",
                    "No chance is told: " + missing.size() + " uncertainties are not given, first the "
                            + missing.get(0).what() + " (" + missing.get(0).about() + ").");
        }
    }

    private List<ExpectedGap> gaps() {
        List<ExpectedGap> gaps = new ArrayList<>();
        for (int i = 0; i < shift.length; i++) {
            ChainStation s = chain.stations().get(i);
            gaps.add(new ExpectedGap(
                    s.id(),
                    s.row().gapMm() + shift[i],
                    s.row().lowerMm(),
                    s.row().upperMm(),
                    doubts.ownMm(i)));
        }
        return gaps;
    }

    private void scheme(int k) {
        Link link = chain.links().get(k);
        SchemeMotion motion = SchemeMotionCalculator.calculate(link.scheme(), link.pivot(), chain.assumed());
        motion.missing().forEach(m -> missing.add(new Missing(m.what(), link.name() + ", " + m.about(), m.offer())));
        assumed.addAll(motion.assumed());
        if (motion.free().isPresent()) {
            held = false;
            note(
                    Severity.STOP,
                    link.name(),
                    "INDEX_UNDETERMINED: nothing holds " + link.part() + " on " + link.carrier()
                            + " against every motion: add a stop.");
        }
        for (int i = 0; i < shift.length; i++) {
            shift[i] += effect(k, i, link.placement().toFinal(motion.shift()), link.finalPivot());
        }
        for (SchemeMotion.MoveError e : motion.errors()) {
            String name = link.name() + ": " + e.name();
            if (e instanceof SchemeMotion.Along a) {
                sources.add(new GapSource.Along(name, link.name(), a.spread(), effects(k, a.perMm())));
            } else if (e instanceof SchemeMotion.InDisc d) {
                sources.add(new GapSource.InDisc(
                        name, link.name(), d.radiusMm(), effects(k, d.perMmX()), effects(k, d.perMmY())));
            }
        }
    }

    private void marks(int k) {
        Link link = chain.links().get(k);
        if (link.carried().isEmpty()) {
            return;
        }
        DatumFit fit = link.carried().get();
        findings.addAll(fit.findings());
        if (marks.in(k)) {
            ownMarks(k, fit);
            return;
        }
        Move unit = fit.covariance().deviations();
        double[] scale = {unit.dxMm(), unit.dyMm(), unit.turnRad()};
        DenseMatrix factor = SemidefiniteFactor.of(correlation(fit.covariance(), scale));
        for (int part = 0; part < factor.cols(); part++) {
            Move move = new Move(
                    scale[0] * factor.get(0, part), scale[1] * factor.get(1, part), scale[2] * factor.get(2, part));
            sources.add(new GapSource.Along(
                    link.name() + ": marks " + (part + 1),
                    link.name(),
                    Distribution.ofStandardDeviation(Shape.NORMAL, 0, 1),
                    carried(k, move, fit.middle())));
        }
    }

    /** The marks that lay this link's bench alone, one by one, beside those that lay another as well. */
    private void ownMarks(int k, DatumFit fit) {
        String link = chain.links().get(k).name();
        for (MarkPull p : fit.pulls()) {
            if (!marks.names().contains(p.mark().id())) {
                Distribution off = Distribution.ofStandardDeviation(
                        Shape.NORMAL, 0, Math.sqrt(p.mark().variance()));
                String name = link + ": mark " + p.mark().id();
                sources.add(new GapSource.Along(name + ", along", link, off, carried(k, p.perMmX(), fit.middle())));
                sources.add(new GapSource.Along(name + ", up", link, off, carried(k, p.perMmY(), fit.middle())));
            }
        }
    }

    private List<Double> carried(int k, Move move, Spot pivot) {
        List<Double> effects = new ArrayList<>();
        for (int i = 0; i < shift.length; i++) {
            effects.add(effect(k, i, move, pivot));
        }
        return effects;
    }

    private static DenseMatrix correlation(MoveCovariance c, double[] scale) {
        double[][] r = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double both = scale[i] * scale[j];
                r[i][j] = both > 0 ? c.rows().get(i).get(j) / both : 0;
            }
        }
        return DenseMatrix.of(r);
    }

    private List<Double> effects(int k, Move ownFrame) {
        Link link = chain.links().get(k);
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < shift.length; i++) {
            all.add(effect(k, i, link.placement().toFinal(ownFrame), link.finalPivot()));
        }
        return all;
    }

    /** How much a gap grows when a link moves so about a pivot, all in the final frame. */
    private double effect(int k, int i, Move move, Spot pivot) {
        ChainStation s = chain.stations().get(i);
        if (!chain.acts(k, s)) {
            return 0;
        }
        Station at = s.row().station();
        return -at.nx() * move.dxMm() - at.ny() * move.dyMm() - at.leverMm(pivot) * move.turnRad();
    }

    private StationShares shares(GapSpread spread, int gap) {
        double all = spread.covarianceMm2(gap, gap);
        List<Double> links = new ArrayList<>();
        double sum = 0;
        for (int k = 0; k < chain.links().size(); k++) {
            Link l = chain.links().get(k);
            double part = 0;
            for (SharedMarks.Shared s : shared) {
                part += s.shareMm2(k, gap);
            }
            for (GapSource s : spread.sources()) {
                part += s.owner().equals(l.name()) ? s.covarianceMm2(gap, gap) : 0;
            }
            double share = all > 0 ? part / all : 0;
            links.add(share);
            sum += share;
        }
        double later = all > 0 ? doubts.laterMm2() / all : 0;
        return new StationShares(spread.gaps().get(gap).id(), links, all > 0 ? Math.max(0, 1 - sum - later) : 0, later);
    }

    private Optional<String> spender(StationShares shares) {
        int most = 0;
        for (int k = 1; k < shares.links().size(); k++) {
            most = shares.links().get(k) > shares.links().get(most) ? k : most;
        }
        double share = shares.links().get(most);
        if (!(share > Math.max(shares.readings(), shares.later()))) {
            return Optional.empty();
        }
        String name = chain.links().get(most).name();
        note(
                Severity.NOTE,
                name,
                String.format(
                        Locale.ROOT,
                        "%s spends most of the tolerance at %s: %.0f %%.",
                        name,
                        shares.id(),
                        100 * share));
        return Optional.of(name);
    }

    private void note(Severity severity, String about, String sentence) {
        findings.add(new Finding(severity, about, sentence, "rigid-body geometry"));
    }
}
