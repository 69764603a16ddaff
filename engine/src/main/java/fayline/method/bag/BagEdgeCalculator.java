package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Tape: (outline of the tape line + 2 h per pleat)(1 + spare), rolls rounded up. Film: tape rectangle + hand edge on both sides +
 * 2 h for each pleat of that side. Rules of this project (common practice, no source). A bag cut to the flat size bridges inside
 * corners.
 */
public final class BagEdgeCalculator {
    private static final double BINARY_GUARD = 1e-9;
    private static final String CP = "common practice, no source";
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private BagEdgeCalculator() {}

    /** Answers the question. */
    public static BagEdgeResult calculate(BagEdge edge) {
        double a = edge.length().metres();
        double b = edge.width().metres();
        double h = edge.pleatHeight().metres();
        double hand = edge.handEdge().metres();
        if (!(a >= 0 && b >= 0 && h >= 0 && hand >= 0 && edge.spare() >= 0 && Double.isFinite(edge.spare()))
                || edge.pleatsPerLongSide() < 0
                || edge.pleatsPerShortSide() < 0
                || edge.morePleats() < 0
                || edge.rollLength().metres() < 0
                || edge.perimeter().metres() < 0) {
            return new BagEdgeResult(
                    Optional.empty(),
                    OptionalInt.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(new Finding(
                            Severity.STOP,
                            "bag",
                            "Sides, pleats, edges, roll and spare must not be negative: not covered.",
                            CP)));
        }
        double line = edge.perimeter().metres() > 0 ? edge.perimeter().metres() : 2 * (a + b);
        Length tape = new Length((line + 2 * h * edge.pleats()) * (1 + edge.spare()));
        double roll = edge.rollLength().metres();
        OptionalInt rolls = roll > 0 && tape.metres() / roll < Integer.MAX_VALUE
                ? OptionalInt.of((int) Math.ceil(tape.metres() / roll - BINARY_GUARD))
                : OptionalInt.empty();
        Length filmLength = new Length(a + 2 * hand + 2 * h * edge.pleatsPerLongSide());
        Length filmWidth = new Length(b + 2 * hand + 2 * h * edge.pleatsPerShortSide());
        Area film = new Area(filmLength.metres() * filmWidth.metres());
        return new BagEdgeResult(
                Optional.of(tape),
                rolls,
                Optional.of(filmLength),
                Optional.of(filmWidth),
                Optional.of(film),
                List.of(tapeFigure(edge, line, tape), filmFigure(edge, film)),
                List.of());
    }

    private static Figure tapeFigure(BagEdge edge, double line, Length tape) {
        return new Figure(
                "Sealant tape",
                FORMAT.length(tape),
                "(tape line + 2 h per pleat)(1 + spare)",
                List.of(
                        new Figure.Input("tape line", FORMAT.length(new Length(line)), Figure.Origin.COMPUTED),
                        new Figure.Input("pleats", String.valueOf(edge.pleats()), Figure.Origin.ENTERED),
                        new Figure.Input("pleat height h", FORMAT.length(edge.pleatHeight()), Figure.Origin.ENTERED),
                        new Figure.Input(
                                "spare",
                                String.format(Locale.ROOT, "%.0f %%", edge.spare() * 100),
                                Figure.Origin.ENTERED)),
                CP,
                List.of());
    }

    private static Figure filmFigure(BagEdge edge, Area film) {
        return new Figure(
                "Bag film",
                FORMAT.area(film),
                "(a + 2 edge + 2 h pleats on the long side)(b + 2 edge + 2 h pleats on the short side)",
                List.of(
                        new Figure.Input("hand edge", FORMAT.length(edge.handEdge()), Figure.Origin.ENTERED),
                        new Figure.Input("pleat height h", FORMAT.length(edge.pleatHeight()), Figure.Origin.ENTERED)),
                CP,
                List.of("A bag cut to the flat size bridges inside corners."));
    }
}
