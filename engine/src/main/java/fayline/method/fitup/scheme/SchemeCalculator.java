package fayline.method.fitup.scheme;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.Move;
import fayline.method.fitup.Station;
import fayline.method.fitup.odds.ExpectedGap;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapOddsCalculator;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.odds.GapSpread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Compares locating schemes: errors of stops become errors of gaps by the way the part settles on them ({@link Settling}),
 * Cov(g) = T Cov(eps) T' + diag(u^2) + u_b^2 11' [jcgm100]. A scheme without all its uncertainties gets no chance.
 */
public final class SchemeCalculator {
    private static final double ALIKE = 1e-9;
    private static final String SOURCE = "rigid-body settling on stops, geometry";

    private SchemeCalculator() {}

    /** Compares the schemes. */
    public static SchemeComparison calculate(SchemeQuestion question) {
        List<SchemeOutcome> outcomes =
                question.schemes().stream().map(s -> outcome(question, s)).toList();
        Optional<SchemeOutcome> best = outcomes.stream()
                .filter(o -> o.odds().isPresent())
                .reduce((a, b) -> chance(b) > chance(a) + ALIKE ? b : a);
        return new SchemeComparison(outcomes, best.map(SchemeOutcome::name));
    }

    private static double chance(SchemeOutcome o) {
        return o.odds().map(d -> d.joint().probability()).orElse(0.0);
    }

    private static SchemeOutcome outcome(SchemeQuestion question, Scheme scheme) {
        StopRows rows = StopRows.of(scheme, question.assumed());
        Settling settling = settling(question, rows.stops());
        GapDoubts doubts = doubts(question);
        List<Missing> missing = both(rows.missing(), doubts.missing());
        List<Assumption> assumed =
                both(rows.assumed(), doubts.assumed()).stream().distinct().toList();
        List<Finding> findings = new ArrayList<>(findings(scheme, settling, missing, assumed));
        Optional<GapSpread> spread = Optional.empty();
        Optional<GapOdds> odds = Optional.empty();
        List<Improvement> improvements = List.of();
        if (missing.isEmpty() && settling.free().isEmpty()) {
            GapSpread s = spread(question, settling, rows.errors(), doubts);
            GapOdds o = doubts.apart(GapOddsCalculator.calculate(s, question.seed()));
            spread = Optional.of(s);
            odds = Optional.of(o);
            improvements = improvements(question, rows, s, o, doubts);
        }
        return new SchemeOutcome(
                scheme.name(),
                rows.stops(),
                settling.condition(),
                weights(settling, rows.stops().size()),
                spread,
                odds,
                missing,
                assumed,
                improvements,
                findings);
    }

    private static Settling settling(SchemeQuestion question, List<Stop> stops) {
        List<Station> stations = question.gaps().stream().map(ReadGap::station).toList();
        return Settling.of(question.pivot(), stops, stations);
    }

    private static GapDoubts doubts(SchemeQuestion question) {
        return new GapDoubts(
                question.gaps().stream().map(g -> g.station().id()).toList(),
                question.gaps().stream().map(ReadGap::readingMm).toList(),
                question.commonReadingMm(),
                question.later(),
                question.besides(),
                question.assumed());
    }

    private static <T> List<T> both(List<T> one, List<T> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    private static GapSpread spread(
            SchemeQuestion question, Settling settling, List<StopError> errors, GapDoubts doubts) {
        List<ExpectedGap> gaps = new ArrayList<>();
        for (int i = 0; i < question.gaps().size(); i++) {
            ReadGap g = question.gaps().get(i);
            double shift = 0;
            for (StopError e : errors) {
                shift += e.shiftMm(settling, i);
            }
            gaps.add(new ExpectedGap(
                    g.station().id(), g.predictedMm() + shift, g.lowerMm(), g.upperMm(), doubts.ownMm(i)));
        }
        List<GapSource> sources = new ArrayList<>();
        errors.forEach(e -> sources.add(e.onGaps(settling)));
        sources.addAll(doubts.sources());
        return new GapSpread(gaps, sources);
    }

    private static List<Improvement> improvements(
            SchemeQuestion question, StopRows rows, GapSpread now, GapOdds odds, GapDoubts doubts) {
        List<Trial> trials = new ArrayList<>();
        for (int k = 0; k < now.sources().size(); k++) {
            GapSource source = now.sources().get(k);
            if (source.deviationMm(odds.worst()) > 0) {
                trials.add(new Trial(Improvement.Kind.HALVE, source.name(), 0, now.with(k, source.scaled(0.5))));
            }
        }
        for (int j = 0; j < rows.stops().size(); j++) {
            double travel = rows.stops().get(j).travelMm();
            for (double by : travel > 0 ? List.of(travel, -travel) : List.<Double>of()) {
                List<Stop> moved = new ArrayList<>(rows.stops());
                moved.set(j, moved.get(j).along(by));
                Settling settling = settling(question, moved);
                if (settling.free().isEmpty()) {
                    trials.add(new Trial(
                            Improvement.Kind.SET_ELSEWHERE,
                            moved.get(j).id(),
                            by,
                            spread(question, settling, rows.errors(), doubts)));
                }
            }
        }
        if (doubts.ownReadAgainMm(odds.worst()) < doubts.ownMm(odds.worst())) {
            trials.add(new Trial(
                    Improvement.Kind.READ_AGAIN,
                    odds.worstStation().id(),
                    0,
                    readAgain(now, odds.worst(), doubts.ownReadAgainMm(odds.worst()))));
        }
        return ranked(trials, now, odds, question.seed());
    }

    private static GapSpread readAgain(GapSpread now, int gap, double ownMm) {
        List<ExpectedGap> gaps = new ArrayList<>(now.gaps());
        ExpectedGap g = gaps.get(gap);
        gaps.set(gap, new ExpectedGap(g.id(), g.predictedMm(), g.lowerMm(), g.upperMm(), ownMm));
        return new GapSpread(gaps, now.sources());
    }

    private static List<Improvement> ranked(List<Trial> trials, GapSpread now, GapOdds odds, long seed) {
        List<GapSpread> spreads = new ArrayList<>(List.of(now));
        trials.forEach(t -> spreads.add(t.spread()));
        List<Double> chances = GapOddsCalculator.calculateChances(spreads, seed);
        List<Improvement> all = new ArrayList<>();
        for (int k = 0; k < trials.size(); k++) {
            Trial t = trials.get(k);
            all.add(new Improvement(
                    t.kind(),
                    t.about(),
                    t.alongMm(),
                    chances.get(0),
                    chances.get(k + 1),
                    odds.worstStation().deviationMm(),
                    t.spread().deviationMm(odds.worst())));
        }
        return all.stream()
                .filter(i -> i.gain() > ALIKE || i.worstAfterMm() < i.worstBeforeMm() - ALIKE)
                .sorted(Comparator.comparingDouble((Improvement i) -> -i.gain())
                        .thenComparingDouble(Improvement::worstAfterMm))
                .toList();
    }

    private record Trial(Improvement.Kind kind, String about, double alongMm, GapSpread spread) {}

    private static List<List<Double>> weights(Settling settling, int stops) {
        List<List<Double>> rows = new ArrayList<>();
        for (int i = 0; i < settling.gaps(); i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < stops; j++) {
                row.add(settling.weight(i, j));
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<Finding> findings(
            Scheme scheme, Settling settling, List<Missing> missing, List<Assumption> assumed) {
        List<Finding> all = new ArrayList<>();
        if (settling.free().isPresent()) {
            Move m = settling.free().get();
            all.add(finding(
                    Severity.STOP,
                    scheme,
                    Phrase.of(
                            "INDEX_UNDETERMINED: %s does not hold the part, it can still go (%s, %s) with a turn of"
                                    + " %.3f deg: add a stop against that.",
                            scheme.name(), Amount.mm(m.dxMm(), 3), Amount.mm(m.dyMm(), 3), m.turnDeg())));
        } else if (settling.isPoor()) {
            all.add(finding(
                    Severity.CAUTION,
                    scheme,
                    String.format(
                            Locale.ROOT,
                            "POOR_INDEXING: the stops of %s hold unevenly (condition %.0f, above 50 is poor): set two on"
                                    + " one edge and one on another, as far apart as possible.",
                            scheme.name(),
                            settling.condition())));
        }
        if (!missing.isEmpty()) {
            all.add(finding(
                    Severity.NOTE,
                    scheme,
                    "No chance is told for " + scheme.name() + ": "
                            + missing.size()
                            + " uncertainties are not given, first the "
                            + missing.get(0).what() + " ("
                            + missing.get(0).about() + ")."));
        }
        assumed.forEach(a ->
                all.add(finding(Severity.CAUTION, scheme, Phrase.of("Assumed for %s: %s", scheme.name(), a.words()))));
        return all;
    }

    private static Finding finding(Severity severity, Scheme scheme, Phrase phrase) {
        return new Finding(severity, scheme.name(), phrase, SOURCE);
    }

    private static Finding finding(Severity severity, Scheme scheme, String sentence) {
        return new Finding(severity, scheme.name(), sentence, SOURCE);
    }
}
