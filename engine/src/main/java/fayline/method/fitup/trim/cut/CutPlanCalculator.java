package fayline.method.fitup.trim.cut;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import fayline.method.fitup.outline.EdgeRun;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Joins the depths of stations to cut lines: linear in the arc length between stations, down to 0 at the next station that is not cut;
 * past the last station of an edge the depth stays as it is there to the end of the edge and no farther. At first each place is cut
 * only to its depth less what is left on (common practice, no source): material cannot be put back.
 */
public final class CutPlanCalculator {
    private static final double NOTHING_MM = 1e-6;
    private static final double SAME_PLACE_MM = 1e-6;
    private static final String CP = "common practice, no source";

    private CutPlanCalculator() {}

    /** Answers the question. */
    public static CutPlanResult calculate(CutPlan plan) {
        List<CutLine> lines = new ArrayList<>();
        for (EdgeRun edge : plan.edges()) {
            lines.addAll(along(plan, edge));
        }
        CornerRuns.Blended blended = CornerRuns.blend(plan, lines);
        lines = blended.lines();
        double area = lines.stream().mapToDouble(CutLine::areaMm2).sum();
        List<Finding> findings = new ArrayList<>();
        if (!lines.isEmpty()) {
            findings.add(leaveOn(lines));
            findings.addAll(blended.findings());
        }
        return new CutPlanResult(lines, area, CutWords.of(lines, area), findings);
    }

    private static Finding leaveOn(List<CutLine> lines) {
        double most = lines.stream()
                .flatMap(l -> l.stops().stream())
                .mapToDouble(s -> s.depthMm() - s.firstMm())
                .max()
                .orElse(0);
        boolean none = lines.stream().flatMap(l -> l.stops().stream()).allMatch(s -> s.firstMm() <= NOTHING_MM);
        return new Finding(
                Severity.NOTE,
                "trim",
                none
                        ? Phrase.plain(
                                "All of it is within what is left on at first: take it off by sanding and read again as you go.")
                        : Phrase.of(
                                "Leave up to %s on at first, read again, then finish. Material cannot be put back.",
                                Amount.mm(most, 1)),
                CP);
    }

    private static List<CutLine> along(CutPlan plan, EdgeRun edge) {
        List<CutStation> on = plan.stations().stream()
                .filter(s -> s.edge().equals(edge.name()))
                .sorted(Comparator.comparingDouble(s -> plan.placeMm(edge, s)))
                .toList();
        List<CutLine> lines = new ArrayList<>();
        int i = 0;
        while (i < on.size()) {
            if (on.get(i).depthMm() <= NOTHING_MM) {
                i++;
                continue;
            }
            int last = i;
            while (last + 1 < on.size() && on.get(last + 1).depthMm() > NOTHING_MM) {
                last++;
            }
            lines.add(line(plan, edge, on, i, last));
            i = last + 1;
        }
        return lines;
    }

    private static CutLine line(CutPlan plan, EdgeRun edge, List<CutStation> on, int first, int last) {
        List<CutLine.Stop> stops = new ArrayList<>();
        double start = edge.fromMm();
        if (first > 0) {
            stops.add(station(plan, edge, on.get(first - 1)));
        } else if (plan.placeMm(edge, on.get(first)) > start + SAME_PLACE_MM) {
            stops.add(end(plan, on.get(first), "the start of the " + edge.name() + " edge", start));
        }
        for (int k = first; k <= last; k++) {
            stops.add(station(plan, edge, on.get(k)));
        }
        if (last + 1 < on.size()) {
            stops.add(station(plan, edge, on.get(last + 1)));
        } else if (plan.placeMm(edge, on.get(last)) < edge.toMm() - SAME_PLACE_MM) {
            stops.add(end(plan, on.get(last), "the end of the " + edge.name() + " edge", edge.toMm()));
        }
        return new CutLine(edge.name(), plan.sides().getOrDefault(edge.name(), CutSide.PART), rising(stops));
    }

    /** Of stations at one place the deeper counts. */
    private static List<CutLine.Stop> rising(List<CutLine.Stop> stops) {
        List<CutLine.Stop> all = new ArrayList<>();
        for (CutLine.Stop s : stops) {
            int n = all.size() - 1;
            if (n >= 0 && s.sMm() - all.get(n).sMm() <= SAME_PLACE_MM) {
                if (s.depthMm() > all.get(n).depthMm()) {
                    all.set(n, s);
                }
            } else {
                all.add(s);
            }
        }
        return all;
    }

    private static CutLine.Stop station(CutPlan plan, EdgeRun edge, CutStation s) {
        return new CutLine.Stop(
                s.id(), true, plan.placeMm(edge, s), clean(s.depthMm()), clean(s.depthMm() - plan.leaveOnMm(s)));
    }

    private static CutLine.Stop end(CutPlan plan, CutStation beside, String name, double sMm) {
        return new CutLine.Stop(name, false, sMm, beside.depthMm(), clean(beside.depthMm() - plan.leaveOnMm(beside)));
    }

    private static double clean(double depthMm) {
        return depthMm <= NOTHING_MM ? 0 : depthMm;
    }
}
