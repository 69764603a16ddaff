package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Area with margin: rectangle (a + 2m)(b + 2m), smooth convex outline A + P m + pi m2 [steiner1840]; times the surface factor.
 */
public final class CoverCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private CoverCalculator() {}

    /** Answers the question. */
    public static CoverResult calculate(Cover cover) {
        double m = cover.margin().metres();
        double plan;
        String formula;
        boolean deep = false;
        boolean sound = m >= 0 && cover.surfaceFactor() >= 1 - 1e-9 && Double.isFinite(cover.surfaceFactor());
        if (cover.shape() instanceof Cover.Rectangle r) {
            sound &= r.length().metres() >= 0 && r.width().metres() >= 0;
            plan = (r.length().metres() + 2 * m) * (r.width().metres() + 2 * m);
            formula = "(a + 2m)(b + 2m) x surface factor";
        } else {
            Cover.Convex c = (Cover.Convex) cover.shape();
            double a = c.area().squareMetres();
            double p = c.perimeter().metres();
            sound &= a >= 0 && p >= 0;
            // No plane outline has less edge than the circle of its area (isoperimetric inequality).
            deep = p * p < 4 * Math.PI * a * (1 - 1e-6);
            plan = a + p * m + Math.PI * m * m;
            formula = "(A + P m + pi m2) x surface factor";
        }
        if (!sound) {
            return new CoverResult(
                    Optional.empty(),
                    Optional.empty(),
                    List.of(new Finding(
                            Severity.STOP,
                            "bag",
                            "Sides, edge and margin must not be negative, the surface factor not below 1: not covered.",
                            "[steiner1840]")));
        }
        Area area = new Area(plan * cover.surfaceFactor());
        Figure figure = new Figure(
                "Area with margin",
                FORMAT.area(area),
                formula,
                List.of(
                        new Figure.Input("margin", FORMAT.length(cover.margin()), Figure.Origin.ENTERED),
                        new Figure.Input(
                                "surface factor",
                                String.format(Locale.ROOT, "%.2f", cover.surfaceFactor()),
                                Figure.Origin.ENTERED)),
                cover.shape() instanceof Cover.Rectangle ? "geometry" : "[steiner1840]",
                List.of());
        List<Finding> findings = !deep
                ? List.of()
                : List.of(new Finding(
                        Severity.CAUTION,
                        "bag",
                        "The edge is shorter than that of a flat piece of this area: a deep part, whose margin this only"
                                + " estimates.",
                        "[steiner1840]"));
        return new CoverResult(Optional.of(area), Optional.of(figure), findings);
    }
}
