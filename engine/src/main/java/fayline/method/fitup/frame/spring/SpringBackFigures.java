package fayline.method.fitup.frame.spring;

import fayline.basis.finding.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How the main figures of a spring-back come about. */
final class SpringBackFigures {
    private static final String SOURCE = "[liu-hu1997]";

    private SpringBackFigures() {}

    static List<Figure> of(SpringBack question, SpringBackShape shape) {
        List<Figure.Input> deviations = question.clamps().stream()
                .map(c -> new Figure.Input(
                        "deviation at clamp " + c.id(),
                        number(c.deviationMm(), c.at().freedom().isTurn()),
                        Figure.Origin.MEASURED))
                .toList();
        List<Figure> figures = new ArrayList<>();
        for (ClampForce f : shape.clampForces()) {
            boolean turn = f.clamp().at().freedom().isTurn();
            figures.add(new Figure(
                    "Force of clamp " + f.clamp().id(),
                    String.format(Locale.ROOT, "%.1f %s", f.forceN(), turn ? "N mm" : "N"),
                    "-C^-1 (deviation - clamp position)",
                    deviations,
                    SOURCE,
                    List.of("Straight beams, small motions, no contact.")));
        }
        for (Watched w : shape.watched()) {
            boolean turn = w.watch().at().freedom().isTurn();
            figures.add(new Figure(
                    "Shift of " + w.watch().id() + " after release",
                    number(w.shiftMm(), turn)
                            + (w.stdMm().isPresent()
                                    ? " with a standard deviation of "
                                            + number(w.stdMm().getAsDouble(), turn)
                                    : ""),
                    "K_assembly^-1 K_part u0, u0 the shape of least energy through the deviations",
                    deviations,
                    SOURCE,
                    List.of("Straight beams, small motions, no contact.")));
        }
        return figures;
    }

    private static String number(double value, boolean turn) {
        return String.format(Locale.ROOT, turn ? "%.6f rad" : "%.3f mm", value);
    }
}
