package fayline.method.fitup.trim.cut;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import java.util.ArrayList;
import java.util.List;

/** Says cuts in the builder's words: "0.8 mm at station 5 tapering to 0 at station 8, aft edge only; 130 mm² in all". */
final class CutWords {
    private static final double SAME_MM = 0.05;
    private static final double NOTHING_MM = 1e-6;

    private CutWords() {}

    static Phrase of(List<CutLine> lines, double areaMm2) {
        if (lines.isEmpty()) {
            return Phrase.plain("Nothing to cut.");
        }
        List<CutLine> asked = lines.stream()
                .filter(l -> l.stops().stream().anyMatch(CutLine.Stop::isStation))
                .toList();
        List<String> edges = asked.stream().map(CutLine::edge).distinct().toList();
        List<Phrase> parts = new ArrayList<>();
        for (CutLine line : asked) {
            String edge = edges.size() == 1 ? "" : ", " + line.edge() + " edge";
            String neighbour = line.side() == CutSide.NEIGHBOUR ? " off the neighbour" : "";
            parts.add(Phrase.of("%s%s%s", along(line), neighbour, edge));
        }
        String only = edges.size() == 1 ? ", " + edges.get(0) + " edge only" : "";
        String round = asked.size() < lines.size() ? ", run out round the corner" : "";
        return Phrase.of("%s%s%s; %s in all", Phrase.joined("; ", parts), only, round, Amount.mm2(areaMm2));
    }

    private static Phrase along(CutLine line) {
        List<CutLine.Stop> stops = line.stops();
        CutLine.Stop first = stops.get(0);
        CutLine.Stop last = stops.get(stops.size() - 1);
        double least = stops.stream().mapToDouble(CutLine.Stop::depthMm).min().orElse(0);
        if (line.deepestMm() - least < SAME_MM) {
            return Phrase.of("%s from %s to %s", mm(line.deepestMm()), where(first), where(last));
        }
        String from = first.depthMm() <= NOTHING_MM ? "from 0 at " + where(first) + " to " : "";
        List<Phrase> middle = new ArrayList<>();
        for (CutLine.Stop stop : stops) {
            if (stop.depthMm() > NOTHING_MM) {
                middle.add(Phrase.of("%s at %s", mm(stop.depthMm()), where(stop)));
            }
        }
        String to = last.depthMm() <= NOTHING_MM ? " tapering to 0 at " + where(last) : "";
        return Phrase.of("%s%s%s", from, Phrase.joined(", ", middle), to);
    }

    private static Amount mm(double depth) {
        return Amount.mm(depth, depth < SAME_MM ? 2 : 1);
    }

    private static String where(CutLine.Stop stop) {
        return stop.isStation() ? "station " + stop.name() : stop.name();
    }
}
