package fayline.method.tube;

import java.util.Arrays;
import java.util.Optional;

/**
 * Least bend radius and distance between supports by the tube's size, in inches as the handbook prints them [faa-h-8083-30].
 * Recalled, not read: to be confirmed against the handbook before use. Near fittings supports stand some 20 percent closer.
 */
public enum SupportTable {
    /** 1/4 inch. */
    QUARTER(0.25, 9.0 / 16, 13.5, 16),
    /** 5/16 inch. */
    FIVE_SIXTEENTHS(5.0 / 16, 0.75, 15, 18),
    /** 3/8 inch. */
    THREE_EIGHTHS(0.375, 15.0 / 16, 16.5, 20),
    /** 1/2 inch. */
    HALF(0.5, 1.25, 19, 23),
    /** 5/8 inch. */
    FIVE_EIGHTHS(0.625, 1.5, 22, 25.5);

    private static final double INCH_M = 0.0254;
    private static final double NEAR_M = 0.0002;

    private final double outerIn;
    private final double radiusIn;
    private final double aluminiumIn;
    private final double steelIn;

    SupportTable(double outerIn, double radiusIn, double aluminiumIn, double steelIn) {
        this.outerIn = outerIn;
        this.radiusIn = radiusIn;
        this.aluminiumIn = aluminiumIn;
        this.steelIn = steelIn;
    }

    /** The row of a tube; empty where the table has none. */
    public static Optional<SupportTable> of(double outerM) {
        return Arrays.stream(values())
                .filter(r -> Math.abs(r.outerIn * INCH_M - outerM) < NEAR_M)
                .findFirst();
    }

    /** Least bend radius of aluminium at the centreline, in metres. */
    public double aluminiumRadiusM() {
        return radiusIn * INCH_M;
    }

    /** Distance between supports of an aluminium line, in metres. */
    public double aluminiumSupportsM() {
        return aluminiumIn * INCH_M;
    }

    /** Distance between supports of a steel line, in metres. */
    public double steelSupportsM() {
        return steelIn * INCH_M;
    }
}
