package fayline.basis.numeric;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A symmetric matrix of which each row is kept from its first entry to the diagonal, as stiffness matrices of chains and rings
 * are. It never changes. Unit-less: the caller's units go in and come out.
 */
public final class ProfileMatrix {
    private final int[] first;
    private final int[] start;
    private final double[] values;

    private ProfileMatrix(int[] first, int[] start, double[] values) {
        this.first = first;
        this.start = start;
        this.values = values;
    }

    /**
     * Begins an empty matrix.
     *
     * @param size rows and columns; not negative
     */
    public static Builder builder(int size) {
        return new Builder(size);
    }

    /** Rows and columns. */
    public int size() {
        return first.length;
    }

    /** One element, counted from 0. */
    public double get(int row, int col) {
        int i = Math.max(row, col);
        int j = Math.min(row, col);
        return j < first[i] ? 0 : values[start[i] + j - first[i]];
    }

    /** This times a column of numbers. */
    public double[] times(double[] column) {
        if (column.length != size()) {
            throw new IllegalArgumentException("a column of " + size() + " is needed, not of " + column.length);
        }
        double[] product = new double[column.length];
        for (int i = 0; i < column.length; i++) {
            int at = start[i];
            for (int j = first[i]; j < i; j++, at++) {
                product[i] += values[at] * column[j];
                product[j] += values[at] * column[i];
            }
            product[i] += values[at] * column[i];
        }
        return product;
    }

    /**
     * Factors the matrix with some unknowns held at zero.
     *
     * @param held the rows and columns that are left out
     */
    public ProfileFactor factor(BitSet held) {
        return new ProfileFactor(this, held);
    }

    int first(int row) {
        return first[row];
    }

    /** Where a row begins in its list of values. */
    int start(int row) {
        return start[row];
    }

    /** A copy of all kept values, row after row. */
    double[] copyOfValues() {
        return values.clone();
    }

    /** Gathers contributions; those to one place add up. */
    public static final class Builder {
        private final int size;
        private final List<Entry> entries = new ArrayList<>();

        private Builder(int size) {
            this.size = size;
        }

        /**
         * Adds to one place and to its mirror across the diagonal.
         *
         * @param row from 0
         * @param col from 0; give each pair once
         * @param value what to add
         */
        public Builder add(int row, int col, double value) {
            if (row < 0 || col < 0 || row >= size || col >= size) {
                throw new IllegalArgumentException("no place " + row + ", " + col + " in a matrix of " + size);
            }
            entries.add(new Entry(Math.max(row, col), Math.min(row, col), value));
            return this;
        }

        /** The matrix. */
        public ProfileMatrix build() {
            int[] first = new int[size];
            for (int i = 0; i < size; i++) {
                first[i] = i;
            }
            entries.forEach(e -> first[e.row] = Math.min(first[e.row], e.col));
            int[] start = new int[size];
            int length = 0;
            for (int i = 0; i < size; i++) {
                start[i] = length;
                length += i - first[i] + 1;
            }
            double[] values = new double[length];
            entries.forEach(e -> values[start[e.row] + e.col - first[e.row]] += e.value);
            return new ProfileMatrix(first, start, values);
        }
    }

    private record Entry(int row, int col, double value) {}
}
