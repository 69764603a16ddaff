package fayline.method.uncertainty;

import java.util.List;

/**
 * Dimensions that add up to one.
 *
 * @param dimensions at least one
 */
public record ToleranceStack(List<Dimension> dimensions) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if it is empty
     */
    public ToleranceStack {
        dimensions = List.copyOf(dimensions);
        if (dimensions.isEmpty()) {
            throw new IllegalArgumentException("a stack of no dimensions");
        }
    }

    /**
     * One dimension of a stack.
     *
     * @param name what it is
     * @param sensitivity how much the stack grows with it: 1, -1, or any other number where it acts on a slant
     * @param nominal as drawn
     * @param upper deviation allowed upward, with its sign
     * @param lower deviation allowed downward, with its sign; not above {@code upper}
     */
    public record Dimension(String name, double sensitivity, double nominal, double upper, double lower) {
        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException naming the dimension
         */
        public Dimension {
            if (!Double.isFinite(sensitivity)
                    || !Double.isFinite(nominal)
                    || !(lower <= upper)
                    || !Double.isFinite(upper - lower)) {
                throw new IllegalArgumentException("dimension " + name + " cannot be: " + sensitivity + " x " + nominal
                        + ", " + lower + " to " + upper);
            }
        }

        /** How far the middle of the tolerance lies from the nominal. */
        double shift() {
            return (upper + lower) / 2;
        }

        /** Half the tolerance as the stack feels it; not negative. */
        double half() {
            return Math.abs(sensitivity) * (upper - lower) / 2;
        }
    }
}
