package fayline.app.pdf;

import fayline.app.drawing.template.Scribe;
import fayline.app.drawing.template.Template;
import fayline.app.drawing.template.TemplateMark;
import fayline.method.fitup.Spot;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** One sheet of a template: the window with its lines, the bars to measure, the words and the map of the sheets. */
final class TemplateSheet {
    /** Free on every side: what printers cannot reach. */
    static final double MARGIN_MM = 8;
    /** Height of the words below the window. */
    static final double FOOT_MM = 44;
    /** Width of the strip with the upright bar, right of the window. */
    static final double STRIP_MM = 10;
    /** Length of the bars. */
    static final double BAR_MM = 100;

    /** Length of the bars in inches. */
    static final int INCHES = 4;
    /** An inch. */
    static final double INCH_MM = 25.4;

    private static final double BESIDE_MM = 0.9;
    private static final double MAP_MM = 60;
    private static final double SMALL_MM = 2.7;
    private static final double TICK_MM = 9;
    private static final double NOTHING_MM = 1e-6;

    private final Template template;
    private final Tiling tiling;
    private final Tiling.Tile tile;
    private final MmPen pen;
    private final PDFont plain;
    private final PDFont bold;
    private final double left = MARGIN_MM;
    private final double low = MARGIN_MM + FOOT_MM;

    TemplateSheet(Template template, Tiling tiling, Tiling.Tile tile, MmPen pen, PDFont plain, PDFont bold) {
        this.template = template;
        this.tiling = tiling;
        this.tile = tile;
        this.pen = pen;
        this.plain = plain;
        this.bold = bold;
    }

    void draw() {
        window();
        pen.stroke(0.15, 0.5, false);
        pen.frame(left, low, tiling.windowWidthMm(), tiling.windowHeightMm());
        bars();
        words();
        map();
    }

    private double x(Spot p) {
        return left + p.xMm() - tile.leftMm();
    }

    private double y(Spot p) {
        return low + p.yMm() - tile.lowMm();
    }

    private void window() {
        pen.clip(left, low, tiling.windowWidthMm(), tiling.windowHeightMm());
        pen.stroke(0.35, 0, false);
        path(template.closedEdge());
        for (Scribe s : template.scribes()) {
            pen.stroke(0.2, 0, false);
            path(s.finish());
            if (!Template.same(s)) {
                pen.stroke(0.2, 0.25, true);
                path(s.first());
            }
        }
        template.marks().forEach(this::mark);
        tiling.crosses().forEach(this::cross);
        pen.unclip();
    }

    private void path(List<Spot> points) {
        pen.line(points.stream().map(p -> new double[] {x(p), y(p)}).toList());
    }

    private void mark(TemplateMark m) {
        Spot at = m.place().at();
        double nx = m.place().nx();
        double ny = m.place().ny();
        pen.stroke(0.15, 0, false);
        path(List.of(at.plus(-TICK_MM * nx, -TICK_MM * ny), at.plus(TICK_MM * nx, TICK_MM * ny)));
        if (!tiling.holds(tile, at)) {
            return;
        }
        // words lie on the side that is not cut away, clear of the lines
        double away = m.side() == CutSide.NEIGHBOUR && m.depthMm() > NOTHING_MM ? -1 : 1;
        double reach = TICK_MM + 1.5;
        double wide = MmPen.width(plain, 3, m.words(template.units()));
        Spot p = at.plus(away * reach * nx, away * reach * ny);
        double along = away * nx;
        double from = x(p) - wide * (along > 0.5 ? 0 : along < -0.5 ? 1 : 0.5);
        double room = tiling.windowWidthMm();
        double textX = Math.max(left + 1, Math.min(left + room - wide - 1, from));
        double textY = Math.max(low + 1.5, Math.min(low + tiling.windowHeightMm() - 4, y(p) - 1));
        pen.text(textX, textY, 3, plain, m.words(template.units()));
    }

    private void cross(Tiling.Cross c) {
        if (!tiling.holds(tile, c.at())) {
            return;
        }
        pen.stroke(0.15, 0, false);
        double cx = x(c.at());
        double cy = y(c.at());
        pen.line(cx - 4, cy, cx + 4, cy);
        pen.line(cx, cy - 4, cx, cy + 4);
        pen.text(cx + 0.8, cy + 0.8, SMALL_MM, plain, c.name());
    }

    private void bars() {
        pen.stroke(0.25, 0, false);
        double y = MARGIN_MM + FOOT_MM - 7;
        pen.line(left + 1, y, left + 1 + BAR_MM, y);
        double x = left + tiling.windowWidthMm() + 4;
        double up = low + 1;
        pen.line(x, up, x, up + BAR_MM);
        for (int mm = 0; mm <= BAR_MM; mm += 10) {
            double tick = mm % 50 == 0 ? 2.5 : 1.5;
            pen.line(left + 1 + mm, y, left + 1 + mm, y + tick);
            pen.line(x, up + mm, x - tick, up + mm);
        }
        double below = y - BESIDE_MM;
        double right = x + BESIDE_MM;
        pen.line(left + 1, below, left + 1 + INCHES * INCH_MM, below);
        pen.line(right, up, right, up + INCHES * INCH_MM);
        for (int inch = 0; inch <= INCHES; inch++) {
            double at = inch * INCH_MM;
            pen.line(left + 1 + at, below, left + 1 + at, below - 1.8);
            pen.line(right, up + at, right + 1.8, up + at);
        }
        pen.text(
                left + 1,
                y - 6.2,
                3.2,
                bold,
                "100 mm and 4 in: measure either before use, across and up. Print at 100 %.");
        pen.textUp(x + 5.7, up, 3.2, bold, "100 mm and 4 in: measure either before use.");
    }

    private void words() {
        double room = left + tiling.windowWidthMm() + STRIP_MM - MAP_MM - 3 - left - 1;
        double y = MARGIN_MM + FOOT_MM - 18.2;
        double x = left + 1;
        pen.text(x, y, 4.2, bold, MmPen.fitting(bold, 4.2, template.heading().part(), room));
        y -= 4.2;
        pen.text(x, y, 3, plain, MmPen.fitting(plain, 3, template.heading().details(), room));
        for (String line : lines()) {
            y -= 3.5;
            pen.text(x, y, SMALL_MM, plain, MmPen.fitting(plain, SMALL_MM, line, room));
        }
    }

    private List<String> lines() {
        List<String> all = new ArrayList<>();
        all.add("Seen from outside, true size. Thick: the edge as it is. Right is " + template.alongX() + ".");
        all.add(sides());
        if (template.cuts(CutSide.PART) || template.cuts(CutSide.NEIGHBOUR)) {
            all.add("Cut outside the broken line first. Read the gap again. Finish to the thin line.");
            all.add("What is cut off cannot be put back. Check every depth before the first cut.");
            all.add("Dust of glazing and laminate harms: mask and goggles on, suction running.");
        }
        all.add("Overlay the crosses of equal number on neighbouring sheets, then tape.");
        return all;
    }

    private String sides() {
        boolean part = template.cuts(CutSide.PART);
        boolean neighbour = template.cuts(CutSide.NEIGHBOUR);
        if (part && neighbour) {
            return "Inside the edge: cut the part. Outside it: cut the neighbour, edge laid on edge.";
        }
        if (neighbour) {
            return "Cut the neighbour: lay the thick line on the neighbour's own edge.";
        }
        return part ? "Cut the part, inside its edge." : "No cut: edge and stations only.";
    }

    private void map() {
        List<Tiling.Tile> tiles = tiling.tiles();
        double right = left + tiling.windowWidthMm() + STRIP_MM;
        List<Spot> edge = template.edge();
        double fromX = Math.min(
                tiles.stream().mapToDouble(Tiling.Tile::leftMm).min().orElseThrow(),
                edge.stream().mapToDouble(Spot::xMm).min().orElseThrow());
        double fromY = Math.min(
                tiles.stream().mapToDouble(Tiling.Tile::lowMm).min().orElseThrow(),
                edge.stream().mapToDouble(Spot::yMm).min().orElseThrow());
        double toX = Math.max(
                tiles.stream().mapToDouble(Tiling.Tile::leftMm).max().orElseThrow() + tiling.windowWidthMm(),
                edge.stream().mapToDouble(Spot::xMm).max().orElseThrow());
        double toY = Math.max(
                tiles.stream().mapToDouble(Tiling.Tile::lowMm).max().orElseThrow() + tiling.windowHeightMm(),
                edge.stream().mapToDouble(Spot::yMm).max().orElseThrow());
        double scale = Math.min(MAP_MM / (toX - fromX), (FOOT_MM - 9) / (toY - fromY));
        double x0 = right - MAP_MM;
        double y0 = MARGIN_MM;
        for (Tiling.Tile t : tiles) {
            if (t.equals(tile)) {
                pen.fill(
                        x0 + (t.leftMm() - fromX) * scale,
                        y0 + (t.lowMm() - fromY) * scale,
                        tiling.windowWidthMm() * scale,
                        tiling.windowHeightMm() * scale,
                        0.85);
            }
        }
        pen.stroke(0.1, 0.4, false);
        for (Tiling.Tile t : tiles) {
            double x = x0 + (t.leftMm() - fromX) * scale;
            double y = y0 + (t.lowMm() - fromY) * scale;
            pen.frame(x, y, tiling.windowWidthMm() * scale, tiling.windowHeightMm() * scale);
            pen.text(
                    x + tiling.windowWidthMm() * scale / 2 - 1.5,
                    y + tiling.windowHeightMm() * scale / 2 - 1,
                    2.4,
                    plain,
                    t.name());
        }
        pen.stroke(0.3, 0, false);
        pen.line(template.closedEdge().stream()
                .map(p -> new double[] {x0 + (p.xMm() - fromX) * scale, y0 + (p.yMm() - fromY) * scale})
                .toList());
        pen.text(
                x0,
                MARGIN_MM + FOOT_MM - 7,
                3.6,
                bold,
                "Sheet " + tile.name() + ", " + (tiles.indexOf(tile) + 1) + " of " + tiles.size());
    }
}
