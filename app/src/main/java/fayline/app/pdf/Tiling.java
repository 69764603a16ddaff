package fayline.app.pdf;

import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a drawing in true size is spread over sheets: windows of one size in rows and columns that overlap, of which only those
 * that carry something are printed; and crosses that neighbouring sheets share.
 *
 * @param windowWidthMm width of a window
 * @param windowHeightMm height of a window
 * @param tiles the sheets to print, from the upper left, row after row
 * @param crosses the shared crosses
 */
record Tiling(double windowWidthMm, double windowHeightMm, List<Tile> tiles, List<Cross> crosses) {
    /** How far two neighbours overlap. */
    static final double OVERLAP_MM = 15;

    private static final double EDGE_ROOM_MM = 6;
    private static final double[] CROSS_SHARES = {0.2, 0.8};

    Tiling {
        tiles = List.copyOf(tiles);
        crosses = List.copyOf(crosses);
    }

    /**
     * One sheet's window in the plane of the part.
     *
     * @param row counted from the top, from 0
     * @param column counted from the left, from 0
     * @param leftMm its left edge
     * @param lowMm its lower edge
     */
    record Tile(int row, int column, double leftMm, double lowMm) {
        /** What the sheet is called, as {@code B2}: row B, second column. */
        String name() {
            return rowLetters(row) + (column + 1);
        }

        private static String rowLetters(int row) {
            String last = String.valueOf((char) ('A' + row % 26));
            return row < 26 ? last : rowLetters(row / 26 - 1) + last;
        }
    }

    /**
     * A cross that two neighbours share.
     *
     * @param at where
     * @param name its number
     */
    record Cross(Spot at, String name) {}

    /**
     * Spreads.
     *
     * @param bounds lower left and upper right corner of everything
     * @param carried the lines for whose sake sheets are printed
     * @param widthMm width of a window
     * @param heightMm height of a window
     */
    static Tiling of(List<Spot> bounds, List<List<Spot>> carried, double widthMm, double heightMm) {
        double spanX = bounds.get(1).xMm() - bounds.get(0).xMm() + 2 * EDGE_ROOM_MM;
        double spanY = bounds.get(1).yMm() - bounds.get(0).yMm() + 2 * EDGE_ROOM_MM;
        int columns = count(spanX, widthMm);
        int rows = count(spanY, heightMm);
        double wide = columns * widthMm - (columns - 1) * OVERLAP_MM;
        double high = rows * heightMm - (rows - 1) * OVERLAP_MM;
        double left = bounds.get(0).xMm() - EDGE_ROOM_MM - (wide - spanX) / 2;
        double top = bounds.get(1).yMm() + EDGE_ROOM_MM + (high - spanY) / 2;
        List<Tile> tiles = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Tile tile =
                        new Tile(r, c, left + c * (widthMm - OVERLAP_MM), top - r * (heightMm - OVERLAP_MM) - heightMm);
                if (carries(tile, carried, widthMm, heightMm)) {
                    tiles.add(tile);
                }
            }
        }
        return new Tiling(widthMm, heightMm, tiles, crosses(tiles, widthMm, heightMm));
    }

    /** Whether a place lies in a tile's window. */
    boolean holds(Tile tile, Spot p) {
        return p.xMm() >= tile.leftMm()
                && p.xMm() <= tile.leftMm() + windowWidthMm
                && p.yMm() >= tile.lowMm()
                && p.yMm() <= tile.lowMm() + windowHeightMm;
    }

    private static int count(double span, double window) {
        return span <= window ? 1 : 1 + (int) Math.ceil((span - window) / (window - OVERLAP_MM) - 1e-9);
    }

    private static boolean carries(Tile t, List<List<Spot>> lines, double width, double height) {
        for (List<Spot> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                if (meets(line.get(i - 1), line.get(i), t, width, height)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a straight line has a part in the window: the shares of its length inside each pair of sides, met. */
    private static boolean meets(Spot a, Spot b, Tile t, double width, double height) {
        double[] shares = {0, 1};
        return clip(a.xMm() - t.leftMm(), b.xMm() - a.xMm(), width, shares)
                && clip(a.yMm() - t.lowMm(), b.yMm() - a.yMm(), height, shares);
    }

    private static boolean clip(double from, double by, double room, double[] shares) {
        if (by == 0) {
            return from >= 0 && from <= room;
        }
        double enter = Math.min(-from / by, (room - from) / by);
        double leave = Math.max(-from / by, (room - from) / by);
        shares[0] = Math.max(shares[0], enter);
        shares[1] = Math.min(shares[1], leave);
        return shares[0] <= shares[1];
    }

    private static List<Cross> crosses(List<Tile> tiles, double width, double height) {
        List<Cross> crosses = new ArrayList<>();
        for (Tile t : tiles) {
            if (at(tiles, t.row(), t.column() + 1).isPresent()) {
                double x = t.leftMm() + width - OVERLAP_MM / 2;
                for (double share : CROSS_SHARES) {
                    add(crosses, x, t.lowMm() + share * height);
                }
            }
            if (at(tiles, t.row() + 1, t.column()).isPresent()) {
                double y = t.lowMm() + OVERLAP_MM / 2;
                for (double share : CROSS_SHARES) {
                    add(crosses, t.leftMm() + share * width, y);
                }
            }
        }
        return crosses;
    }

    private static void add(List<Cross> crosses, double x, double y) {
        crosses.add(new Cross(new Spot(x, y), Integer.toString(crosses.size() + 1)));
    }

    private static Optional<Tile> at(List<Tile> tiles, int row, int column) {
        return tiles.stream()
                .filter(t -> t.row() == row && t.column() == column)
                .findFirst();
    }
}
