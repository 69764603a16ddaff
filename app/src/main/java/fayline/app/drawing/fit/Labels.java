package fayline.app.drawing.fit;

import fayline.app.drawing.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for words beside pins: near first, never over one another, and clear of the lines where that is possible. */
final class Labels {
    private static final double[] FARTHER = {0, 2, 4, 7, 10, 13};
    private static final double[] ASIDE = {0, 2, -2, 4, -4, 7, -7, 10, -10, 14, -14};
    private static final double ROOM_MM = 0.5;

    private final double widthMm;
    private final double heightMm;
    private final List<Point> lines;
    private final List<Box> placed = new ArrayList<>();

    Labels(double widthMm, double heightMm, List<Point> lines) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.lines = lines;
    }

    /** A rectangle by its upper left corner. */
    record Box(double x, double y, double width, double height) {
        boolean meets(Box o) {
            return x < o.x + o.width && o.x < x + width && y < o.y + o.height && o.y < y + height;
        }

        boolean holds(Point p) {
            return p.xMm() > x && p.xMm() < x + width && p.yMm() > y && p.yMm() < y + height;
        }
    }

    /**
     * Room for one label: outside the edge, else inside the part.
     *
     * @param tip the outermost point of its pin on the sheet
     * @param foot where the pin stands on the edge
     * @param nx x component of the outward direction on the sheet
     * @param ny y component, down
     * @param width of the words
     * @param height of the words
     * @return empty where there is none
     */
    Optional<Box> place(Point tip, Point foot, double nx, double ny, double width, double height) {
        return beside(tip, nx, ny, width, height, true)
                .or(() -> beside(foot, -nx, -ny, width, height, true))
                .or(() -> beside(tip, nx, ny, width, height, false));
    }

    private Optional<Box> beside(Point from, double nx, double ny, double width, double height, boolean clear) {
        for (double farther : FARTHER) {
            for (double aside : ASIDE) {
                double reach = 1.2 + farther + Math.abs(nx) * width / 2 + Math.abs(ny) * height / 2;
                double cx = from.xMm() + nx * reach - ny * aside;
                double cy = from.yMm() + ny * reach + nx * aside;
                Box box = new Box(cx - width / 2, cy - height / 2, width, height);
                if (free(box, clear)) {
                    placed.add(box);
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }

    private boolean free(Box b, boolean clear) {
        return b.x() >= ROOM_MM
                && b.y() >= ROOM_MM
                && b.x() + b.width() <= widthMm - ROOM_MM
                && b.y() + b.height() <= heightMm - ROOM_MM
                && placed.stream().noneMatch(b::meets)
                && (!clear || lines.stream().noneMatch(b::holds));
    }
}
