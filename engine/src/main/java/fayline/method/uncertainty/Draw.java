package fayline.method.uncertainty;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.SemidefiniteFactor;
import java.util.List;

/** Inputs that are drawn together. */
public sealed interface Draw {
    /** The names of the inputs, in order. */
    List<String> names();

    /**
     * One input, independent of all others.
     *
     * @param name its name
     * @param distribution how it is spread
     */
    record Single(String name, Distribution distribution) implements Draw {
        @Override
        public List<String> names() {
            return List.of(name);
        }
    }

    /**
     * Two inputs that lie anywhere in a disc, as a pin in its hole.
     *
     * @param x name of the first
     * @param y name of the second
     * @param meanX middle of the disc
     * @param meanY middle of the disc
     * @param radius of the disc; not negative
     */
    record Disc(String x, String y, double meanX, double meanY, double radius) implements Draw {
        /** Checks the radius. */
        public Disc {
            if (!Double.isFinite(meanX) || !Double.isFinite(meanY) || !(radius >= 0) || Double.isInfinite(radius)) {
                throw new IllegalArgumentException("no disc: " + meanX + ", " + meanY + ", radius " + radius);
            }
        }

        @Override
        public List<String> names() {
            return List.of(x, y);
        }
    }

    /**
     * Normal inputs that go together.
     *
     * @param names their names
     * @param means their means
     * @param covariance row by row; common parts (less than full rank) are allowed
     */
    record Correlated(List<String> names, List<Double> means, List<List<Double>> covariance) implements Draw {
        /**
         * Copies the lists.
         *
         * @throws IllegalArgumentException if the sizes differ or it is no covariance
         */
        public Correlated {
            names = List.copyOf(names);
            means = List.copyOf(means);
            covariance = covariance.stream().map(List::copyOf).toList();
            int n = names.size();
            if (means.size() != n
                    || covariance.size() != n
                    || covariance.stream().anyMatch(r -> r.size() != n)) {
                throw new IllegalArgumentException("names, means and covariance of correlated inputs differ in size");
            }
            SemidefiniteFactor.of(matrix(covariance));
        }

        DenseMatrix factor() {
            return SemidefiniteFactor.of(matrix(covariance));
        }

        private static DenseMatrix matrix(List<List<Double>> rows) {
            return DenseMatrix.of(rows.stream()
                    .map(r -> r.stream().mapToDouble(Double::doubleValue).toArray())
                    .toArray(double[][]::new));
        }
    }
}
