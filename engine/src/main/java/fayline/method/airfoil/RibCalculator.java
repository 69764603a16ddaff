package fayline.method.airfoil;

import fayline.basis.finding.Figure;
import fayline.basis.geometry.Outline;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Measures of a rib from its outline: area, edge and height (geometry of [naca460] sections or of given coordinates). */
public final class RibCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private RibCalculator() {}

    /** Answers the question. */
    public static RibResult calculate(Rib rib) {
        RibOutline outline = RibOutline.of(rib);
        Optional<Area> area = outline.net().map(Outline::area);
        Optional<Length> height = outline.net()
                .map(o -> new Length(
                        o.outer().stream().mapToDouble(Outline.Point::yM).max().orElse(0)
                                - o.outer().stream()
                                        .mapToDouble(Outline.Point::yM)
                                        .min()
                                        .orElse(0)));
        List<Figure> figures = area.map(a -> List.of(new Figure(
                        "Rib area",
                        FORMAT.area(a),
                        "area inside the section from start to end, less the holes",
                        List.of(
                                new Figure.Input("section", rib.section().name(), Figure.Origin.ENTERED),
                                new Figure.Input("chord", FORMAT.length(rib.chord()), Figure.Origin.ENTERED),
                                new Figure.Input(
                                        "from, to",
                                        String.format(Locale.ROOT, "%.2f to %.2f of the chord", rib.from(), rib.to()),
                                        Figure.Origin.ENTERED)),
                        "[naca460]",
                        List.of())))
                .orElse(List.of());
        return new RibResult(
                outline,
                area,
                outline.net().map(Outline::perimeter),
                outline.blank().map(o -> Outline.of(o.outer()).area()),
                height,
                figures);
    }
}
