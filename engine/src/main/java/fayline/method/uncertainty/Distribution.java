package fayline.method.uncertainty;

import fayline.basis.numeric.RandomStream;
import fayline.basis.numeric.StandardNormal;

/**
 * What is known of a quantity: the value it most likely has and how values are spread about it [jcgm100], 4.3.
 *
 * @param shape how values are spread
 * @param mean the middle
 * @param halfWidth the standard deviation of a normal spread, otherwise how far the furthest value lies from the middle; not
 *     negative
 */
public record Distribution(Shape shape, double mean, double halfWidth) {
    /** How far out a normal spread is counted where a worst case is asked: three standard deviations. */
    public static final double NORMAL_LIMIT = 3;

    private static final double ROOT_2 = Math.sqrt(2);
    private static final double ROOT_3 = Math.sqrt(3);
    private static final double ROOT_6 = Math.sqrt(6);

    /** Shapes of spread about a middle, all symmetrical. */
    public enum Shape {
        /** Bell-shaped, without an end. */
        NORMAL(1),
        /** Every value between two limits as likely as any other. */
        RECTANGULAR(ROOT_3),
        /** Falling straight from the middle to two limits. */
        TRIANGULAR(ROOT_6),
        /** Of something that swings between two limits, as a thermostat lets it. */
        ARCSINE(ROOT_2);

        private final double perStandardDeviation;

        Shape(double perStandardDeviation) {
            this.perStandardDeviation = perStandardDeviation;
        }
    }

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the middle is no number or the width is negative
     */
    public Distribution {
        if (!Double.isFinite(mean) || !(halfWidth >= 0) || Double.isInfinite(halfWidth)) {
            throw new IllegalArgumentException("no distribution: " + shape + " about " + mean + ", width " + halfWidth);
        }
    }

    /** A normal spread. */
    public static Distribution normal(double mean, double standardDeviation) {
        return new Distribution(Shape.NORMAL, mean, standardDeviation);
    }

    /** Anything between two limits. */
    public static Distribution rectangular(double mean, double halfWidth) {
        return new Distribution(Shape.RECTANGULAR, mean, halfWidth);
    }

    /** A spread of a shape whose standard deviation is known. */
    public static Distribution ofStandardDeviation(Shape shape, double mean, double standardDeviation) {
        return new Distribution(shape, mean, standardDeviation * shape.perStandardDeviation);
    }

    /** The standard deviation: the half-width over 1, root 3, root 6 or root 2. */
    public double standardDeviation() {
        return halfWidth / shape.perStandardDeviation;
    }

    /** How far from the middle a value may lie; three standard deviations where there is no end. */
    public double limit() {
        return shape == Shape.NORMAL ? NORMAL_LIMIT * halfWidth : halfWidth;
    }

    /** The same spread, wider or narrower by a factor. */
    public Distribution scaled(double factor) {
        return new Distribution(shape, mean, halfWidth * factor);
    }

    /**
     * The value below which a probability lies.
     *
     * @param probability between 0 and 1, both excluded
     */
    public double quantile(double probability) {
        return mean + halfWidth * standard(probability);
    }

    private double standard(double p) {
        return switch (shape) {
            case NORMAL -> StandardNormal.quantile(p);
            case RECTANGULAR -> 2 * p - 1;
            case TRIANGULAR -> p < 0.5 ? Math.sqrt(2 * p) - 1 : 1 - Math.sqrt(2 * (1 - p));
            case ARCSINE -> -StrictMath.cos(Math.PI * p);
        };
    }

    /** A value drawn from the stream. */
    public double draw(RandomStream stream) {
        return shape == Shape.NORMAL ? mean + halfWidth * stream.nextNormal() : quantile(stream.nextUnit());
    }
}
