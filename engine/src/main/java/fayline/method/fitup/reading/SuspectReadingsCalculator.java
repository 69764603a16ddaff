package fayline.method.fitup.reading;

import fayline.basis.finding.Phrase;
import fayline.basis.numeric.DenseMatrix;
import fayline.basis.units.Amount;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks for readings that do not agree with the rest. Against the stations beside it on the same edge: the distance from the
 * straight line between them, where it is largest, beyond max(0.3 mm, 3 u, six times the usual such distance). Against the best rigid
 * move of the part: the residual with the station itself left out of the fit, beyond max(0.3 mm, 3 u) and three times its own standard
 * error; for this four readings more than motions are needed, which are seven stations of a flat part. Of a curved part that has
 * fewer than ten readings, tilts are left out, then the shift out; and the oddest reading alone is told, for it draws others with it
 * through the many motions. Rules of this project (common practice, no source). Nothing is dropped.
 */
public final class SuspectReadingsCalculator {
    private static final double LEAST_MM = 0.3;
    private static final double DEVIATIONS = 3;
    private static final double USUAL = 6;
    private static final int SPARE_ROWS = 4;
    private static final int IN_PLANE = 3;
    private static final double RANK = 1e-6;

    private SuspectReadingsCalculator() {}

    /** Answers the question: the suspects in the order of the rows, a station at most once by each rule. */
    public static List<Suspect> calculate(SuspectReadings asked) {
        WantedLines<?, ?> lines = asked.lines();
        List<Suspect> all = new ArrayList<>(besideNeighbours(asked, lines));
        all.addAll(besideFit(asked, lines));
        return List.copyOf(all);
    }

    private static List<Suspect> besideNeighbours(SuspectReadings asked, WantedLines<?, ?> lines) {
        List<FitRow> rows = asked.rows();
        int n = rows.size();
        double[] off = new double[n];
        Arrays.fill(off, Double.NaN);
        for (int i = 1; i < n - 1; i++) {
            FitRow a = rows.get(i - 1);
            FitRow b = rows.get(i);
            FitRow c = rows.get(i + 1);
            if (!b.edge().isEmpty() && a.edge().equals(b.edge()) && c.edge().equals(b.edge())) {
                double before = a.station().at().distanceMm(b.station().at());
                double after = b.station().at().distanceMm(c.station().at());
                if (before + after > 0) {
                    double share = before / (before + after);
                    off[i] = deviation(b) - (1 - share) * deviation(a) - share * deviation(c);
                }
            }
        }
        double[] known = Arrays.stream(off)
                .filter(v -> !Double.isNaN(v))
                .map(Math::abs)
                .sorted()
                .toArray();
        double usual = known.length < 3 ? 0 : known[(known.length - 1) / 2];
        List<Suspect> found = new ArrayList<>();
        for (int i = 1; i < n - 1; i++) {
            double limit = Math.max(
                    Math.max(LEAST_MM, DEVIATIONS * asked.deviationsMm().get(i)), USUAL * usual);
            boolean largest = !(Math.abs(off[i - 1]) > Math.abs(off[i])) && !(Math.abs(off[i + 1]) >= Math.abs(off[i]));
            if (Math.abs(off[i]) > limit && largest) {
                found.add(
                        suspect(lines.wanted(i), Suspect.Against.NEIGHBOURS, off[i], limit, "the stations beside it"));
            }
        }
        return found;
    }

    private static List<Suspect> besideFit(SuspectReadings asked, WantedLines<?, ?> lines) {
        int n = lines.count();
        int motions = Math.min(lines.unknowns(), n - SPARE_ROWS);
        if (motions < IN_PLANE) {
            return List.of();
        }
        DenseMatrix.Singular svd = rows(lines, motions).svd();
        double[] off = IntStream.range(0, n)
                .mapToDouble(i -> lines.levelMm(i) - lines.wanted(i).nominalMm())
                .toArray();
        int rank = svd.rank(RANK);
        double[] leverage = new double[n];
        double[] residual = new double[n];
        double squares = 0;
        for (int i = 0; i < n; i++) {
            residual[i] = off[i];
            for (int k = 0; k < rank; k++) {
                double along = 0;
                for (int j = 0; j < n; j++) {
                    along += svd.u().get(j, k) * off[j];
                }
                residual[i] -= svd.u().get(i, k) * along;
                leverage[i] += svd.u().get(i, k) * svd.u().get(i, k);
            }
            squares += residual[i] * residual[i];
        }
        List<Suspect> found = new ArrayList<>();
        double oddest = 0;
        for (int i = 0; i < n; i++) {
            double open = 1 - leverage[i];
            if (open < 1e-9) {
                continue;
            }
            double without = residual[i] / open;
            double others = Math.max(0, squares - residual[i] * residual[i] / open) / (n - rank - 1);
            double limit = Math.max(LEAST_MM, DEVIATIONS * asked.deviationsMm().get(i));
            double standardError = Math.sqrt(others / open);
            if (Math.abs(without) > limit && Math.abs(without) > DEVIATIONS * standardError) {
                Suspect s = suspect(
                        lines.wanted(i),
                        Suspect.Against.BEST_FIT,
                        without,
                        Math.max(limit, DEVIATIONS * standardError),
                        "all other stations after the best move");
                double odd = Math.abs(without) / standardError;
                if (!asked.curved() || odd > oddest) {
                    if (asked.curved()) {
                        found.clear();
                    }
                    found.add(s);
                    oddest = odd;
                }
            }
        }
        return found;
    }

    /** The rows in the first of the motions: those in the plane, then out, then the tilts. */
    private static DenseMatrix rows(WantedLines<?, ?> lines, int motions) {
        int[] order = lines.unknowns() == IN_PLANE ? new int[] {0, 1, 2} : new int[] {0, 1, 5, 2, 3, 4};
        return DenseMatrix.of(IntStream.range(0, lines.count())
                .mapToObj(lines::coefficients)
                .map(a -> IntStream.range(0, motions)
                        .mapToDouble(k -> a[order[k]])
                        .toArray())
                .toArray(double[][]::new));
    }

    private static double deviation(FitRow row) {
        return row.gapMm() - row.nominalMm();
    }

    private static Suspect suspect(Wanted reading, Suspect.Against against, double off, double limit, String words) {
        return new Suspect(
                reading.station(),
                reading.flush(),
                against,
                off,
                limit,
                Phrase.of(
                        "Station %s reads %s %s than %s would have it. Read it again; it counts until then.",
                        reading.named(), Amount.mm(Math.abs(off), 1), off > 0 ? "more" : "less", words));
    }
}
