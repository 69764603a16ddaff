package fayline.store.file.kind;

import static fayline.store.file.shape.Key.may;

import fayline.basis.geometry.Outline;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.OutlineShape;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.outline.TracedLine;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.PlaceText;
import fayline.store.file.shape.Text;
import fayline.store.file.shape.Words;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The part's edge in the kind {@code fits}: corners with radii, a drawing, or points traced from the part. */
public final class FitEdge {
    private static final double CORNER_TURN = Math.toRadians(20);

    static final Keys OUTLINE = Keys.of(
                    "an outline of a fit",
                    may("vertices", PlaceText.PLACES, "Corners in order, in the unit below."),
                    may("radii", PlaceText.RADII, "Radius of the corners, one for all or one each; sharp where none."),
                    may(
                            "file",
                            Text.of(
                                    "a file in outlines/ ending in .dxf or .svg",
                                    "outlines/[A-Za-z0-9._/-]+\\.(?:dxf|svg|DXF|SVG)"),
                            "A drawing, DXF or SVG."),
                    may("traced", PlaceText.PLACES, "Points measured along the edge, in order, in the unit below."),
                    may("corners", PlaceText.COUNTS, "Which of the traced points are corners; none for a smooth line."),
                    may(
                            "unit",
                            Words.of("mm", "cm", "m", "in", "ft"),
                            "The unit of the numbers; for a drawing what the file says, else mm."),
                    may("layer", Forms.TEXT, "The layer of a DXF that holds the outline; all where nothing is said."))
            .oneOf("vertices", "file", "traced");

    private FitEdge() {}

    /**
     * Reads an outline.
     *
     * @param f its fields
     * @param drawings makes an outline of a mapping that names a drawing; empty where that was refused
     * @return empty where something was refused
     */
    static Optional<OutlineShape> read(Fields f, Function<Tree, Optional<Outline>> drawings) {
        double unit = PlaceText.unitMm(f.text("unit", "mm"));
        if (f.has("vertices")) {
            Optional<List<Spot>> corners = f.read("vertices", t -> PlaceText.places(t, unit));
            List<Double> given = f.read("radii", PlaceText::numbers).orElse(List.of(0.0)).stream()
                    .map(r -> r * unit)
                    .toList();
            return corners.flatMap(c -> Fields.attempt("", t -> new RoundedPolygon(c, each(given, c.size()))));
        }
        if (f.has("traced")) {
            List<Integer> corners = f.read("corners", PlaceText::rising).orElse(List.of());
            return f.read("traced", t -> PlaceText.places(t, unit))
                    .flatMap(p -> Fields.attempt("", t -> new TracedLine(p, corners)));
        }
        return f.has("file") ? drawings.apply(f.tree()).flatMap(FitEdge::drawn) : Optional.empty();
    }

    /**
     * The direction of the edge at its point nearest to a place.
     *
     * @return empty where the edge cannot be drawn, or where the place lies on a sharp corner
     */
    static Optional<EdgePoint> near(Optional<OutlineShape> shape, Spot place) {
        return shape.flatMap(s -> s.drawn().outline())
                .map(o -> o.nearest(place))
                .filter(p -> !p.sharp());
    }

    private static List<Double> each(List<Double> radii, int corners) {
        return radii.size() == 1 ? Collections.nCopies(corners, radii.get(0)) : radii;
    }

    private static Optional<OutlineShape> drawn(Outline outline) {
        List<Spot> points = outline.outer().stream()
                .map(p -> new Spot(p.xM() * 1000, p.yM() * 1000))
                .toList();
        List<Integer> corners = new ArrayList<>();
        int n = points.size();
        for (int i = 0; i < n; i++) {
            Spot a = points.get((i + n - 1) % n);
            Spot b = points.get(i);
            Spot c = points.get((i + 1) % n);
            double before = Math.atan2(b.yMm() - a.yMm(), b.xMm() - a.xMm());
            double after = Math.atan2(c.yMm() - b.yMm(), c.xMm() - b.xMm());
            if (Math.abs(Math.IEEEremainder(after - before, 2 * Math.PI)) > CORNER_TURN) {
                corners.add(i);
            }
        }
        return Fields.attempt("", t -> new TracedLine(points, corners));
    }
}
