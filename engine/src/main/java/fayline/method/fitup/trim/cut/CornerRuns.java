package fayline.method.fitup.trim.cut;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.method.fitup.outline.EdgeRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Keeps cuts without a step where one edge ends and the next begins. Both cut: the corner takes the deeper of the two. Only one
 * cut: its line runs out on the next edge, one in ten, as far as that edge's first station; where that edge may not be touched or
 * is cut on the other side, the depth is kept up to the corner, and that is told. Nowhere is less cut than asked.
 */
final class CornerRuns {
    private static final double SAME_MM = 1e-9;
    /** Length of a run-out per depth. */
    private static final double ONE_IN = 10;

    private static final String CP = "common practice, no source";

    private final CutPlan plan;
    private final List<CutLine> lines;
    private final List<Finding> findings = new ArrayList<>();

    private CornerRuns(CutPlan plan, List<CutLine> lines) {
        this.plan = plan;
        this.lines = new ArrayList<>(lines);
    }

    /** Lines without steps, and what must be said where a step stays. */
    record Blended(List<CutLine> lines, List<Finding> findings) {}

    static Blended blend(CutPlan plan, List<CutLine> lines) {
        CornerRuns runs = new CornerRuns(plan, lines);
        for (EdgeRun edge : plan.edges()) {
            plan.edges().stream()
                    .filter(next -> runs.follows(edge, next))
                    .findFirst()
                    .ifPresent(next -> runs.corner(edge, next));
        }
        return new Blended(List.copyOf(runs.lines), List.copyOf(runs.findings));
    }

    /** Whether an edge begins where another ends; a loop of a single edge has no corner. */
    private boolean follows(EdgeRun edge, EdgeRun next) {
        double off = (next.fromMm() - edge.toMm()) / plan.perimeterMm();
        return !next.name().equals(edge.name()) && Math.abs(off - Math.rint(off)) * plan.perimeterMm() < 1e-6;
    }

    private void corner(EdgeRun edge, EdgeRun next) {
        OptionalInt before = ending(edge);
        OptionalInt after = beginning(next);
        if (side(edge) == side(next) && before.isPresent() && after.isPresent()) {
            level(before.getAsInt(), after.getAsInt());
            return;
        }
        // On two sides of the joint each line ends by itself.
        before.ifPresent(line -> runOut(edge, next, line, true));
        after.ifPresent(line -> runOut(next, edge, line, false));
    }

    private CutSide side(EdgeRun edge) {
        return plan.sides().getOrDefault(edge.name(), CutSide.PART);
    }

    private CutLine.Stop last(int line) {
        List<CutLine.Stop> stops = lines.get(line).stops();
        return stops.get(stops.size() - 1);
    }

    private CutLine.Stop first(int line) {
        return lines.get(line).stops().get(0);
    }

    /** The line that is still cut where its edge ends. */
    private OptionalInt ending(EdgeRun edge) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).edge().equals(edge.name())
                    && last(i).depthMm() > 0
                    && last(i).sMm() > edge.toMm() - SAME_MM) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The line that is cut from where its edge begins. */
    private OptionalInt beginning(EdgeRun edge) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).edge().equals(edge.name())
                    && first(i).depthMm() > 0
                    && first(i).sMm() < edge.fromMm() + SAME_MM) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private void level(int before, int after) {
        CutLine.Stop a = last(before);
        CutLine.Stop b = first(after);
        if (Math.abs(a.depthMm() - b.depthMm()) <= SAME_MM) {
            return;
        }
        CutLine.Stop deeper = a.depthMm() > b.depthMm() ? a : b;
        set(before, lines.get(before).stops().size() - 1, deepened(a, deeper));
        set(after, 0, deepened(b, deeper));
    }

    private static CutLine.Stop deepened(CutLine.Stop stop, CutLine.Stop to) {
        return new CutLine.Stop(stop.name(), stop.isStation(), stop.sMm(), to.depthMm(), to.firstMm());
    }

    private void set(int line, int stop, CutLine.Stop to) {
        List<CutLine.Stop> stops = new ArrayList<>(lines.get(line).stops());
        stops.set(stop, to);
        lines.set(line, new CutLine(lines.get(line).edge(), lines.get(line).side(), stops));
    }

    private void runOut(EdgeRun cut, EdgeRun next, int line, boolean onward) {
        CutLine.Stop end = onward ? last(line) : first(line);
        double wanted = ONE_IN * end.depthMm();
        Optional<CutLine> beyond = plan.uncut().contains(next.name()) || side(cut) != side(next)
                ? Optional.empty()
                : beyond(next, end, wanted, onward);
        if (beyond.isPresent()) {
            lines.add(beyond.get());
        } else {
            square(cut, next);
        }
    }

    /** On the next edge, from the corner to nothing: never past its first station. */
    private Optional<CutLine> beyond(EdgeRun next, CutLine.Stop end, double wanted, boolean onward) {
        double room = plan.stations().stream()
                .filter(s -> s.edge().equals(next.name()))
                .mapToDouble(s -> onward ? plan.placeMm(next, s) - next.fromMm() : next.toMm() - plan.placeMm(next, s))
                .filter(d -> d > SAME_MM)
                .min()
                .orElse(next.lengthMm());
        double length = Math.min(wanted, Math.min(room, next.lengthMm()));
        if (!(length > SAME_MM)) {
            return Optional.empty();
        }
        double corner = onward ? next.fromMm() : next.toMm();
        CutLine.Stop at = new CutLine.Stop(
                "the " + (onward ? "start" : "end") + " of the " + next.name() + " edge",
                false,
                corner,
                end.depthMm(),
                end.firstMm());
        CutLine.Stop nothing = new CutLine.Stop("its run-out", false, corner + (onward ? length : -length), 0, 0);
        return Optional.of(new CutLine(next.name(), side(next), onward ? List.of(at, nothing) : List.of(nothing, at)));
    }

    /** Full depth to the corner: less is never cut than asked. */
    private void square(EdgeRun cut, EdgeRun next) {
        findings.add(new Finding(
                Severity.NOTE,
                "trim",
                Phrase.plain("The cut of the " + cut.name() + " edge keeps its depth up to the " + next.name()
                        + " edge, which must not be touched there: at a sharp corner it runs off the part, at a round one blend it"
                        + " by hand."),
                CP));
    }
}
