package fayline.method.fitup.scheme;

import fayline.method.fitup.Spot;
import fayline.method.uncertainty.Distribution;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** One thing that locates the part. Its uncertainties are empty where nobody has given them. */
public sealed interface Locator {
    /** The same with every stop made another; pins, which are no stops but places, stay. */
    Locator withStops(UnaryOperator<Stop> other);

    /**
     * The part is set by eye to a tape mark.
     *
     * @param stop where, and the direction that matters
     * @param bothWays whether the mark also locates the part along its edge
     * @param halfWidthMm how far off the mark can be
     * @param parallaxMm standard deviation of looking on a slant
     */
    record TapeMark(Stop stop, boolean bothWays, OptionalDouble halfWidthMm, OptionalDouble parallaxMm)
            implements Locator {
        @Override
        public TapeMark withStops(UnaryOperator<Stop> other) {
            return new TapeMark(other.apply(stop), bothWays, halfWidthMm, parallaxMm);
        }
    }

    /**
     * The part is pressed against a spacer.
     *
     * @param stop where
     * @param deviationMm standard deviation of thickness, seating and film together
     * @param notPressedMm how far the part may stand off the spacer where it is not pressed home; zero where it is
     */
    record Spacer(Stop stop, OptionalDouble deviationMm, double notPressedMm) implements Locator {
        /** Checks the number. */
        public Spacer {
            if (!(notPressedMm >= 0) || Double.isInfinite(notPressedMm)) {
                throw new IllegalArgumentException("spacer " + stop.id() + " stands off by " + notPressedMm);
            }
        }

        @Override
        public Spacer withStops(UnaryOperator<Stop> other) {
            return new Spacer(other.apply(stop), deviationMm, notPressedMm);
        }
    }

    /**
     * The part lies against the faces of one block.
     *
     * @param stops its faces
     * @param faceMm standard deviation of each face
     * @param placeMm standard deviation of the whole block, the same on all faces
     */
    record Block(List<Stop> stops, OptionalDouble faceMm, OptionalDouble placeMm) implements Locator {
        /** Copies the list. */
        public Block {
            stops = List.copyOf(stops);
        }

        @Override
        public Block withStops(UnaryOperator<Stop> other) {
            return new Block(stops.stream().map(other).toList(), faceMm, placeMm);
        }
    }

    /**
     * Two pins in drilled holes, the second hole slotted along the line between them.
     *
     * @param name what they are called
     * @param pin1 the round hole
     * @param pin2 the slotted hole
     * @param playMm hole diameter less pin diameter; there is nothing to assume for it, so it must be measured
     * @param positionMm standard deviation of the place of a hole
     */
    record Pins(String name, Spot pin1, Spot pin2, OptionalDouble playMm, OptionalDouble positionMm)
            implements Locator {
        /** Refuses two pins in one place. */
        public Pins {
            if (!(pin1.distanceMm(pin2) > 0)) {
                throw new IllegalArgumentException(name + ": both pins at " + pin1.xMm() + ", " + pin1.yMm());
            }
        }

        @Override
        public Pins withStops(UnaryOperator<Stop> other) {
            return this;
        }
    }

    /**
     * A stop whose error is known.
     *
     * @param stop where
     * @param error how it is spread; a mean other than zero moves the part
     */
    record Known(Stop stop, Distribution error) implements Locator {
        @Override
        public Known withStops(UnaryOperator<Stop> other) {
            return new Known(other.apply(stop), error);
        }
    }

    /**
     * Stops whose normal errors go together.
     *
     * @param stops where
     * @param covarianceMm2 row by row; common parts are allowed
     */
    record Together(List<Stop> stops, List<List<Double>> covarianceMm2) implements Locator {
        /** Copies the lists. */
        public Together {
            stops = List.copyOf(stops);
            covarianceMm2 = covarianceMm2.stream().map(List::copyOf).toList();
            int n = stops.size();
            if (covarianceMm2.size() != n || covarianceMm2.stream().anyMatch(r -> r.size() != n)) {
                throw new IllegalArgumentException("covariance is not " + n + " by " + n);
            }
        }

        @Override
        public Together withStops(UnaryOperator<Stop> other) {
            return new Together(stops.stream().map(other).toList(), covarianceMm2);
        }
    }
}
