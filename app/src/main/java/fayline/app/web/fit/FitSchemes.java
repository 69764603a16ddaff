package fayline.app.web.fit;

import fayline.app.web.frame.Sight;
import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.scheme.Improvement;
import fayline.method.fitup.scheme.SchemeComparison;
import fayline.method.fitup.scheme.SchemeOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Words the ways to locate a part. */
public final class FitSchemes {
    private static final double GOOD = 10;
    private static final double POOR = 50;
    private static final int MOST_SHARES = 2;
    private static final int MOST_HELPS = 3;

    private FitSchemes() {}

    static List<FitAnswer.Scheme> rows(Fit fit, SchemeComparison all, Sight sight, int stations) {
        return all.schemes().stream()
                .map(o -> row(fit, all, sight, o, stations))
                .toList();
    }

    private static FitAnswer.Scheme row(Fit fit, SchemeComparison all, Sight sight, SchemeOutcome o, int stations) {
        return new FitAnswer.Scheme(
                o.name(),
                o.name().equals(fit.holding().chosen()),
                all.best().filter(o.name()::equals).isPresent(),
                o.odds()
                        .map(d -> chance(d.joint().probability()) + " that all " + stations + " end inside")
                        .orElse(""),
                o.odds()
                        .map(d -> d.worstStation().id() + ", "
                                + chance(d.worstStation().chance()))
                        .orElse(""),
                o.odds()
                        .map(d -> FitWords.fine(sight, d.worstStation().deviationMm()))
                        .orElse(""),
                o.odds().map(FitSchemes::shares).orElse(""),
                o.condition() < GOOD
                        ? "evenly"
                        : o.condition() <= POOR ? "fairly" : "poorly: set the stops farther apart");
    }

    private static String shares(GapOdds odds) {
        return odds.shares().stream()
                .limit(MOST_SHARES)
                .map(s -> s.source()
                        + (s.source().contains(s.owner()) ? "" : " (" + s.owner() + ")")
                        + String.format(Locale.ROOT, " %.0f %%", 100 * s.share()))
                .collect(Collectors.joining(", "));
    }

    /** A chance without false certainty at either end. */
    public static String chance(double p) {
        if (p > 0.99) {
            return "over 99 %";
        }
        return p < 0.01 ? "under 1 %" : String.format(Locale.ROOT, "%.0f %%", 100 * p);
    }

    /** What would help, of the scheme of highest chance. */
    static List<String> helps(Sight sight, SchemeComparison all) {
        List<String> words = new ArrayList<>();
        all.schemes().stream()
                .filter(o -> all.best().filter(o.name()::equals).isPresent())
                .forEach(o -> o.improvements().stream()
                        .filter(i -> shows(sight, i))
                        .limit(MOST_HELPS)
                        .map(i -> o.name() + ": " + help(sight, i))
                        .forEach(words::add));
        // what is assumed stands beside the chances already
        all.schemes()
                .forEach(o -> o.findings().stream()
                        .map(f -> f.sentence(sight.format().system()))
                        .filter(s -> o.assumed().stream().noneMatch(x -> s.contains(sight.say(x.words()))))
                        .forEach(s -> words.add(o.name() + ": " + s)));
        return words;
    }

    /** Whether a builder would see the difference: in the chance, or in the spread as it is told. */
    private static boolean shows(Sight sight, Improvement i) {
        return !chance(i.chanceBefore()).equals(chance(i.chanceAfter()))
                || !FitWords.fine(sight, i.worstBeforeMm()).equals(FitWords.fine(sight, i.worstAfterMm()));
    }

    private static String help(Sight sight, Improvement i) {
        String what = switch (i.kind()) {
            case HALVE -> "halve the error of " + i.about();
            case READ_AGAIN -> "read " + i.about() + " twice more";
            case SET_ELSEWHERE ->
                "set " + i.about()
                        + sight.say(Phrase.of(
                                " %s along its edge, %s seen from outside",
                                Amount.placeMm(Math.abs(i.alongMm()), 0),
                                i.alongMm() > 0 ? "counter-clockwise" : "clockwise"));
        };
        String before = chance(i.chanceBefore());
        String after = chance(i.chanceAfter());
        return what
                + (before.equals(after)
                        ? ": the spread at the worst station goes from " + FitWords.fine(sight, i.worstBeforeMm())
                                + " to " + FitWords.fine(sight, i.worstAfterMm()) + "; the chance stays " + after + "."
                        : ": the chance goes from " + before + " to " + after + ".");
    }
}
