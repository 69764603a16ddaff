package fayline.method.fitup.shim;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.scheme.Settling;
import fayline.method.fitup.scheme.Stop;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Shims that hold a move: s = c − a · q at each point. From stock, three reachable heights at or below and three above each s are tried in
 * every combination, and the one kept whose gaps stray least: errors of two shims on one edge add up as a turn, so rounding each by itself
 * is not best. With more than three points the part settles among them by least squares.
 */
public final class ShimCalculator {
    private static final double NOTHING_MM = 1e-9;
    private static final String SOURCE = "[golub-vanloan1996]";
    private static final String CP = "common practice, no source";

    private ShimCalculator() {}

    /** Answers the question. */
    public static ShimResult calculate(ShimQuestion question) {
        List<Double> exact = new ArrayList<>();
        for (IndexPoint p : question.points()) {
            Station c = p.contact();
            exact.add(p.clearanceMm()
                    - c.nx() * question.move().dxMm()
                    - c.ny() * question.move().dyMm()
                    - c.leverMm(question.pivot()) * question.move().turnRad());
        }
        Settling settling = Settling.of(
                question.pivot(),
                question.points().stream().map(p -> Stop.fixed(p.contact())).toList(),
                question.rows().stream().map(FitRow::station).toList());
        Set<ShimFlag> flags = EnumSet.noneOf(ShimFlag.class);
        List<Finding> findings = new ArrayList<>();
        hold(question, settling, flags, findings);
        inTheWay(question, exact, flags, findings);
        Optional<ShimResult.Choice> best = Optional.empty();
        Optional<ShimResult.Choice> rounded = Optional.empty();
        if (question.stock().isPresent() && settling.free().isEmpty()) {
            StackHeights heights = new StackHeights(question.stock().get());
            List<List<ShimStack>> candidates = new ArrayList<>();
            List<ShimStack> nearest = new ArrayList<>();
            for (int j = 0; j < exact.size(); j++) {
                boolean shimmed = question.points().get(j).shimmed();
                candidates.add(shimmed ? heights.beside(exact.get(j)) : List.of(ShimStack.NONE));
                nearest.add(shimmed ? heights.nearest(exact.get(j)) : ShimStack.NONE);
                reach(question.points().get(j), exact.get(j), heights, findings);
            }
            StackSearch search = new StackSearch(question, settling);
            best = Optional.of(search.best(candidates, nearest));
            rounded = Optional.of(search.choice(nearest, false, true));
            if (!best.get().complete()) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        "shims",
                        "More than six points: improved step by step, not every combination.",
                        CP));
            }
        }
        return new ShimResult(exact, settling.condition(), flags, settling.free(), best, rounded, findings);
    }

    private static void hold(ShimQuestion question, Settling settling, Set<ShimFlag> flags, List<Finding> findings) {
        if (settling.free().isPresent()) {
            flags.add(ShimFlag.INDEX_UNDETERMINED);
            findings.add(new Finding(
                    Severity.STOP,
                    "shims",
                    "These " + question.points().size()
                            + " points leave the part free to move. Put two on one edge and one on another, far apart.",
                    SOURCE));
        } else if (settling.isPoor()) {
            flags.add(ShimFlag.POOR_INDEXING);
            findings.add(new Finding(
                    Severity.CAUTION,
                    "shims",
                    String.format(
                            Locale.ROOT,
                            "These points hold poorly (condition %.0f, below 10 is good): move them farther apart.",
                            settling.condition()),
                    SOURCE));
        }
    }

    private static void inTheWay(
            ShimQuestion question, List<Double> exact, Set<ShimFlag> flags, List<Finding> findings) {
        for (int j = 0; j < exact.size(); j++) {
            if (exact.get(j) < -NOTHING_MM && question.points().get(j).shimmed()) {
                flags.add(ShimFlag.STOP_IN_THE_WAY);
                String id = question.points().get(j).contact().id();
                findings.add(new Finding(
                        Severity.STOP,
                        id,
                        Phrase.of("Stop %s is %s in the way: relieve it.", id, Amount.mm(-exact.get(j), 2)),
                        CP));
            }
        }
    }

    private static void reach(IndexPoint point, double exact, StackHeights heights, List<Finding> findings) {
        if (point.shimmed() && exact > heights.highestMm() + NOTHING_MM) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    point.contact().id(),
                    Phrase.of(
                            "Stacks reach %s, %s is needed at %s: add a thicker piece or allow more of them.",
                            Amount.mm(heights.highestMm(), 2),
                            Amount.mm(exact, 2),
                            point.contact().id()),
                    CP));
        }
    }
}
