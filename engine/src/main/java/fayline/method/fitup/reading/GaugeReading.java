package fayline.method.fitup.reading;

import java.util.Optional;

/** One look at one station, as the gauge shows it. */
public sealed interface GaugeReading {
    /** Standard uncertainty of a taper gauge where none is stated, in mm (common practice, no source). */
    double TAPER_DEVIATION_MM = 0.06;

    /** Standard uncertainty of a measured casting where none is stated, in mm (common practice, no source). */
    double CAST_DEVIATION_MM = 0.1;

    /** The gap, in mm. */
    double gapMm();

    /** Its standard uncertainty from this look alone, in mm. */
    double deviationMm();

    /** Whether the true gap can only lie to one side of {@link #gapMm()}. */
    default boolean oneSided() {
        return false;
    }

    /** Whether it shares an error (squeeze, wear of leaves) with other readings of the same hand. */
    default boolean sharesBias() {
        return false;
    }

    /**
     * Feeler leaves: the thickest stack that enters and the thinnest that does not. The gap is their mean; the go value alone
     * would read half a step low.
     *
     * @param goMm enters
     * @param noGoMm does not
     * @param wide where the leaves bridge a concave edge
     */
    record Feeler(double goMm, double noGoMm, Optional<WideGauge> wide) implements GaugeReading {
        /**
         * Checks the order.
         *
         * @throws IllegalArgumentException unless 0 ≤ go ≤ no-go
         */
        public Feeler {
            if (!(goMm >= 0) || !(noGoMm >= goMm) || Double.isInfinite(noGoMm)) {
                throw new IllegalArgumentException("a leaf of " + goMm + " mm that enters and one of " + noGoMm
                        + " mm that does not cannot both be right");
            }
        }

        @Override
        public double gapMm() {
            return (goMm + noGoMm) / 2 + wide.map(WideGauge::missedMm).orElse(0.0);
        }

        @Override
        public double deviationMm() {
            return (noGoMm - goMm) / Math.sqrt(12);
        }

        @Override
        public boolean sharesBias() {
            return true;
        }
    }

    /**
     * A taper gauge, held off square by an angle.
     *
     * @param readingMm what it shows
     * @param deviationMm its standard uncertainty
     * @param tiltRad how far off square; 0 for square
     * @param wide where it bridges a concave edge
     */
    record Taper(double readingMm, double deviationMm, double tiltRad, Optional<WideGauge> wide)
            implements GaugeReading {
        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one is negative or the tilt reaches a right angle
         */
        public Taper {
            requireNotNegative("a taper gauge", readingMm);
            requireNotNegative("an uncertainty", deviationMm);
            if (!(Math.abs(tiltRad) < Math.PI / 2)) {
                throw new IllegalArgumentException("a gauge tilted by " + tiltRad + " rad shows nothing");
            }
        }

        @Override
        public double gapMm() {
            return readingMm * Math.cos(tiltRad) + wide.map(WideGauge::missedMm).orElse(0.0);
        }
    }

    /**
     * Test casting: what was squeezed between the edges, measured after opening.
     *
     * @param castMm measured thickness of the casting
     * @param filmMm thickness of the parting film that lay beside it and was not measured with it; 0 where it was
     * @param deviationMm standard uncertainty of the thickness
     */
    record Cast(double castMm, double filmMm, double deviationMm) implements GaugeReading {
        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one is negative
         */
        public Cast {
            requireNotNegative("a casting", castMm);
            requireNotNegative("a film", filmMm);
            requireNotNegative("an uncertainty", deviationMm);
        }

        @Override
        public double gapMm() {
            return castMm + filmMm;
        }
    }

    /**
     * Any other measure of the gap itself: calipers, a drill shank, a spacer stick.
     *
     * @param gapMm the gap
     * @param deviationMm its standard uncertainty
     */
    record Direct(double gapMm, double deviationMm) implements GaugeReading {
        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one is negative
         */
        public Direct {
            requireNotNegative("a gap read", gapMm);
            requireNotNegative("an uncertainty", deviationMm);
        }
    }

    /**
     * The edges touch: not even the thinnest leaf enters. Counts as 0; the true gap can only be larger, up to that leaf, which as a
     * rectangular spread about its end is leaf/√3.
     *
     * @param thinnestMm the thinnest leaf at hand
     */
    record Touches(double thinnestMm) implements GaugeReading {
        /**
         * Checks the leaf.
         *
         * @throws IllegalArgumentException if it is negative
         */
        public Touches {
            requireNotNegative("a leaf", thinnestMm);
        }

        @Override
        public double gapMm() {
            return 0;
        }

        @Override
        public double deviationMm() {
            return thinnestMm / Math.sqrt(3);
        }

        @Override
        public boolean oneSided() {
            return true;
        }

        @Override
        public boolean sharesBias() {
            return true;
        }
    }

    /**
     * A reading taken at one temperature, brought to another: the gap as it would have been read there. It may come out below
     * nothing, where the edges would overlap.
     *
     * @param read what the gauge showed
     * @param byMm how much wider the gap is at the other temperature
     * @param shiftDeviationMm standard uncertainty of that
     */
    record Warmed(GaugeReading read, double byMm, double shiftDeviationMm) implements GaugeReading {
        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if the shift is no number or its uncertainty negative
         */
        public Warmed {
            requireNotNegative("an uncertainty", shiftDeviationMm);
            if (!Double.isFinite(byMm)) {
                throw new IllegalArgumentException("a gap does not widen by " + byMm + " mm");
            }
        }

        @Override
        public double gapMm() {
            return read.gapMm() + byMm;
        }

        @Override
        public double deviationMm() {
            return Math.hypot(read.deviationMm(), shiftDeviationMm);
        }

        @Override
        public boolean oneSided() {
            return read.oneSided();
        }

        @Override
        public boolean sharesBias() {
            return read.sharesBias();
        }
    }

    private static void requireNotNegative(String what, double valueMm) {
        if (!(valueMm >= 0) || Double.isInfinite(valueMm)) {
            throw new IllegalArgumentException(what + " of " + valueMm + " mm is none");
        }
    }
}
