package fayline.method.fitup.odds;

import fayline.basis.numeric.RandomStream;
import fayline.method.uncertainty.Distribution;
import java.util.ArrayList;
import java.util.List;

/** One cause as one or two numbers: how a point of the unit cube, or a stream of chance, becomes a value of it. */
sealed interface Axis {
    int dimensions();

    /** Turns even numbers between 0 and 1 into values. */
    void place(double[] unit, double[] into, int at);

    /** Draws values. */
    void draw(RandomStream stream, double[] into, int at);

    static List<Axis> all(List<GapSource> sources) {
        return sources.stream().map(Axis::of).toList();
    }

    private static Axis of(GapSource source) {
        if (source instanceof GapSource.Along a) {
            return new Line(a.spread());
        }
        return new Disc(((GapSource.InDisc) source).radiusMm());
    }

    /** Effects of every number on every gap: a row for each gap. */
    static double[][] effects(GapSpread spread) {
        List<List<Double>> columns = new ArrayList<>();
        for (GapSource s : spread.sources()) {
            if (s instanceof GapSource.Along a) {
                columns.add(a.effects());
            } else if (s instanceof GapSource.InDisc d) {
                columns.add(d.effectsX());
                columns.add(d.effectsY());
            }
        }
        double[][] rows = new double[spread.gaps().size()][columns.size()];
        for (int k = 0; k < columns.size(); k++) {
            for (int i = 0; i < rows.length; i++) {
                rows[i][k] = columns.get(k).get(i);
            }
        }
        return rows;
    }

    /** A single number. */
    record Line(Distribution spread) implements Axis {
        @Override
        public int dimensions() {
            return 1;
        }

        @Override
        public void place(double[] unit, double[] into, int at) {
            into[at] = spread.quantile(unit[at]);
        }

        @Override
        public void draw(RandomStream stream, double[] into, int at) {
            into[at] = spread.draw(stream);
        }
    }

    /** Two numbers in a disc. */
    record Disc(double radius) implements Axis {
        @Override
        public int dimensions() {
            return 2;
        }

        @Override
        public void place(double[] unit, double[] into, int at) {
            set(unit[at], unit[at + 1], into, at);
        }

        @Override
        public void draw(RandomStream stream, double[] into, int at) {
            set(stream.nextUnit(), stream.nextUnit(), into, at);
        }

        private void set(double share, double turn, double[] into, int at) {
            double r = radius * Math.sqrt(share);
            into[at] = r * StrictMath.cos(2 * Math.PI * turn);
            into[at + 1] = r * StrictMath.sin(2 * Math.PI * turn);
        }
    }
}
