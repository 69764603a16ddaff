package fayline.app.drawing;

/**
 * A point of a drawing.
 *
 * @param xMm x from the left edge
 * @param yMm y from the upper edge
 */
public record Point(double xMm, double yMm) {
    /** This moved. */
    public Point plus(double dxMm, double dyMm) {
        return new Point(xMm + dxMm, yMm + dyMm);
    }
}
