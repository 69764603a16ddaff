package fayline.method.fitup.trim.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says cuts in the builder's words: "0.8 mm at station 5 tapering to 0 at station 8, aft edge only; 130 mm² in all". */
final class CutWords {
    private static final double SAME_MM = 0.05;
    private static final double NOTHING_MM = 1e-6;

    private CutWords() {}

    static String of(List<CutLine> lines, double areaMm2) {
        if (lines.isEmpty()) {
            return "Nothing to cut.";
        }
        List<String> edges = lines.stream().map(CutLine::edge).distinct().toList();
        List<String> parts = new ArrayList<>();
        for (CutLine line : lines) {
            String edge = edges.size() == 1 ? "" : ", " + line.edge() + " edge";
            String neighbour = line.side() == CutSide.NEIGHBOUR ? " off the neighbour" : "";
            parts.add(along(line) + neighbour + edge);
        }
        String only = edges.size() == 1 ? ", " + edges.get(0) + " edge only" : "";
        return String.join("; ", parts) + only + String.format(Locale.ROOT, "; %.0f mm² in all", areaMm2);
    }

    private static String along(CutLine line) {
        List<CutLine.Stop> stops = line.stops();
        CutLine.Stop first = stops.get(0);
        CutLine.Stop last = stops.get(stops.size() - 1);
        double least = stops.stream().mapToDouble(CutLine.Stop::depthMm).min().orElse(0);
        if (line.deepestMm() - least < SAME_MM) {
            return String.format(Locale.ROOT, "%s from %s to %s", mm(line.deepestMm()), where(first), where(last));
        }
        StringBuilder s = new StringBuilder();
        if (first.depthMm() <= NOTHING_MM) {
            s.append("from 0 at ").append(where(first)).append(" to ");
        }
        List<String> middle = new ArrayList<>();
        for (CutLine.Stop stop : stops) {
            if (stop.depthMm() > NOTHING_MM) {
                middle.add(mm(stop.depthMm()) + " at " + where(stop));
            }
        }
        s.append(String.join(", ", middle));
        if (last.depthMm() <= NOTHING_MM) {
            s.append(" tapering to 0 at ").append(where(last));
        }
        return s.toString();
    }

    private static String mm(double depth) {
        return depth < SAME_MM
                ? String.format(Locale.ROOT, "%.2f mm", depth)
                : String.format(Locale.ROOT, "%.1f mm", depth);
    }

    private static String where(CutLine.Stop stop) {
        return stop.isStation() ? "station " + stop.name() : stop.name();
    }
}
