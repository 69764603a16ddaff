package fayline.app.usecase.fit;

import fayline.flow.project.design.Hand;
import java.util.List;

/** A fit begun on the spot as the text of its definition file. */
final class FitText {
    private FitText() {}

    /**
     * Writes it.
     *
     * @param f the fit
     * @param stations its stations
     * @param marks places at which a move is told, a line each as it stands in the file
     */
    static String of(NewFit f, List<NewFit.Marked> stations, List<String> marks) {
        StringBuilder t = new StringBuilder("# Begun on the spot; \"part:\" names the part once it is known.\nfits:\n");
        t.append("  - id: ").append(quoted(f.id())).append('\n');
        line(t, "name", f.name());
        if (f.hand() != Hand.NONE) {
            line(t, "hand", f.hand().key());
        }
        if (!f.against().isEmpty()) {
            t.append("    against: [")
                    .append(String.join(
                            ", ", f.against().stream().map(FitText::quoted).toList()))
                    .append("]\n");
        }
        line(t, "gap", f.gap());
        line(t, "gap-tolerance", f.gapTolerance());
        line(t, "flush", f.flush());
        line(t, "flush-tolerance", f.flushTolerance());
        t.append("    stations:").append(stations.isEmpty() ? " []" : "").append('\n');
        stations.forEach(m -> station(t, m));
        f.edge().ifPresent(e -> edge(t, e));
        if (!marks.isEmpty()) {
            t.append("    marks:\n");
            marks.forEach(m -> t.append("      - ").append(m).append('\n'));
        }
        gauge(t, f.gauge());
        return t.toString();
    }

    private static void station(StringBuilder t, NewFit.Marked m) {
        t.append("      - {id: ").append(quoted(m.id())).append(", where: ").append(quoted(m.where()));
        beside(t, "at", m.at());
        beside(t, "normal", m.normal());
        beside(t, "out", m.out());
        beside(t, "lean", m.lean());
        t.append("}\n");
    }

    private static void beside(StringBuilder t, String key, String value) {
        if (!value.isBlank()) {
            t.append(", ").append(key).append(": ").append(quoted(value));
        }
    }

    private static void edge(StringBuilder t, NewEdge e) {
        t.append("    outline:\n");
        below(t, e.key(), e.value());
        below(t, "radii", e.radii());
        below(t, "corners", e.corners());
        below(t, "unit", e.unit());
    }

    private static void gauge(StringBuilder t, NewFit.Gauge g) {
        if (!g.name().isEmpty() || !g.deviation().isEmpty() || !g.shared().isEmpty()) {
            t.append("    gauge:\n");
            below(t, "name", g.name().isEmpty() ? "not named" : g.name());
            below(t, "deviation", g.deviation());
            below(t, "shared", g.shared());
        }
    }

    private static void line(StringBuilder t, String key, String value) {
        t.append("    ").append(key).append(": ").append(quoted(value)).append('\n');
    }

    private static void below(StringBuilder t, String key, String value) {
        if (!value.isEmpty()) {
            t.append("      ").append(key).append(": ").append(quoted(value)).append('\n');
        }
    }

    static String quoted(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }
}
