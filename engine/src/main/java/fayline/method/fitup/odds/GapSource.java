package fayline.method.fitup.odds;

import fayline.method.uncertainty.Distribution;
import java.util.List;

/** One cause that disturbs gaps, independent of all other causes. */
public sealed interface GapSource {
    /** What it is, in the builder's words. */
    String name();

    /** What it belongs to: a stop, a bond, the readings. */
    String owner();

    /** Standard deviation that it brings to a gap, in mm. */
    double deviationMm(int gap);

    /** The furthest it can push a gap, in mm; three standard deviations where it has no end. */
    double limitMm(int gap);

    /** How many gaps it acts on. */
    int gaps();

    /** Covariance that it brings to two gaps, in mm2. */
    double covarianceMm2(int one, int other);

    /** The same cause, larger or smaller by a factor. */
    GapSource scaled(double factor);

    private static double checked(double v) {
        if (!Double.isFinite(v)) {
            throw new IllegalArgumentException("an effect of " + v);
        }
        return v;
    }

    /**
     * A cause of one number.
     *
     * @param name what it is
     * @param owner what it belongs to
     * @param spread how the number is spread; its mean must be zero, since expected gaps already hold what is expected
     * @param effects how much each gap grows for one millimetre of it
     */
    record Along(String name, String owner, Distribution spread, List<Double> effects) implements GapSource {
        /** Copies the list. */
        public Along {
            effects = effects.stream().map(GapSource::checked).toList();
            if (spread.mean() != 0) {
                throw new IllegalArgumentException(name + " has a mean of " + spread.mean());
            }
        }

        @Override
        public double deviationMm(int gap) {
            return Math.abs(effects.get(gap)) * spread.standardDeviation();
        }

        @Override
        public double limitMm(int gap) {
            return Math.abs(effects.get(gap)) * spread.limit();
        }

        @Override
        public int gaps() {
            return effects.size();
        }

        @Override
        public double covarianceMm2(int one, int other) {
            double u = spread.standardDeviation();
            return effects.get(one) * effects.get(other) * u * u;
        }

        @Override
        public GapSource scaled(double factor) {
            return new Along(name, owner, spread.scaled(factor), effects);
        }
    }

    /**
     * A cause of two numbers that lie anywhere in a disc, as a pin in its hole.
     *
     * @param name what it is
     * @param owner what it belongs to
     * @param radiusMm of the disc
     * @param effectsX how much each gap grows for one millimetre along x
     * @param effectsY along y
     */
    record InDisc(String name, String owner, double radiusMm, List<Double> effectsX, List<Double> effectsY)
            implements GapSource {
        /** Copies the lists. */
        public InDisc {
            effectsX = effectsX.stream().map(GapSource::checked).toList();
            effectsY = effectsY.stream().map(GapSource::checked).toList();
            if (effectsX.size() != effectsY.size() || !(radiusMm >= 0)) {
                throw new IllegalArgumentException(name + ": radius " + radiusMm + ", " + effectsX.size() + " and "
                        + effectsY.size() + " effects");
            }
        }

        @Override
        public double deviationMm(int gap) {
            return Math.hypot(effectsX.get(gap), effectsY.get(gap)) * radiusMm / 2;
        }

        @Override
        public double limitMm(int gap) {
            return Math.hypot(effectsX.get(gap), effectsY.get(gap)) * radiusMm;
        }

        @Override
        public int gaps() {
            return effectsX.size();
        }

        @Override
        public double covarianceMm2(int one, int other) {
            return (effectsX.get(one) * effectsX.get(other) + effectsY.get(one) * effectsY.get(other))
                    * radiusMm
                    * radiusMm
                    / 4;
        }

        @Override
        public GapSource scaled(double factor) {
            return new InDisc(name, owner, radiusMm * factor, effectsX, effectsY);
        }
    }
}
