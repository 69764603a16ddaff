package fayline.method.fitup.odds;

import fayline.basis.numeric.EvenPoints;
import fayline.basis.numeric.StandardNormal;
import fayline.method.fitup.odds.GapOdds.Share;
import fayline.method.fitup.odds.GapOdds.StationOdds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Odds of gaps: covariance as the sum over the causes [jcgm100], each station's chance by a normal spread, the chance of all
 * together by the true distributions. Errors of gaps go together, so the chance of all is neither the product of the single
 * ones nor the least of them: it is averaged over the causes that they share, and held between 1 - sum (1 - P) and the least P.
 */
public final class GapOddsCalculator {
    private static final double EQUAL = 1e-9;
    private static final int COMPARED = 512;

    private GapOddsCalculator() {}

    /**
     * Reckons the odds.
     *
     * @param spread gaps and causes
     * @param seed of the points of the joint chance; the same seed gives the same answer
     */
    public static GapOdds calculate(GapSpread spread, long seed) {
        JointSum.Sum sum = new JointSum(spread, seed).settled();
        List<StationOdds> stations = stations(spread);
        double misses = stations.stream().mapToDouble(s -> 1 - s.chance()).sum();
        double least = stations.stream().mapToDouble(StationOdds::chance).min().orElse(1);
        int worst = worst(stations);
        return new GapOdds(
                stations,
                covariance(spread),
                new JointChance(sum.value(), sum.error(), Math.max(0, 1 - misses), least, sum.points(), seed),
                worst,
                shares(spread, worst));
    }

    /**
     * The chances of all together alone, of several spreads over the same few points: for comparing like with like.
     *
     * @param spreads any number
     * @param seed of the points
     * @return one chance for each, good to about a hundredth in itself and better in comparison
     */
    public static List<Double> calculateChances(List<GapSpread> spreads, long seed) {
        List<JointSum> sums = spreads.stream().map(s -> new JointSum(s, seed)).toList();
        EvenPoints points =
                EvenPoints.of(sums.stream().mapToInt(JointSum::dimensions).max().orElse(1), COMPARED);
        return sums.stream().map(s -> s.over(points).value()).toList();
    }

    private static List<StationOdds> stations(GapSpread spread) {
        List<StationOdds> all = new ArrayList<>();
        for (int i = 0; i < spread.gaps().size(); i++) {
            ExpectedGap g = spread.gaps().get(i);
            double u = spread.deviationMm(i);
            double own = 3 * g.independentMm();
            double worst = own;
            double squares = own * own;
            for (GapSource s : spread.sources()) {
                worst += s.limitMm(i);
                squares += s.limitMm(i) * s.limitMm(i);
            }
            all.add(new StationOdds(
                    g.id(), g.predictedMm(), g.lowerMm(), g.upperMm(), u, worst, Math.sqrt(squares), chance(g, u)));
        }
        return all;
    }

    private static double chance(ExpectedGap g, double u) {
        if (u > 0) {
            return StandardNormal.between((g.lowerMm() - g.predictedMm()) / u, (g.upperMm() - g.predictedMm()) / u);
        }
        return g.predictedMm() >= g.lowerMm() && g.predictedMm() <= g.upperMm() ? 1 : 0;
    }

    private static int worst(List<StationOdds> stations) {
        int worst = 0;
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).chance() < stations.get(worst).chance() - EQUAL) {
                worst = i;
            }
        }
        return worst;
    }

    private static List<List<Double>> covariance(GapSpread spread) {
        int n = spread.gaps().size();
        List<List<Double>> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < n; j++) {
                row.add(spread.covarianceMm2(i, j));
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<Share> shares(GapSpread spread, int gap) {
        double all = spread.covarianceMm2(gap, gap);
        if (!(all > 0)) {
            return List.of();
        }
        List<Share> shares = new ArrayList<>();
        for (GapSource s : spread.sources()) {
            shares.add(new Share(s.name(), s.owner(), s.covarianceMm2(gap, gap) / all));
        }
        double u = spread.gaps().get(gap).independentMm();
        shares.add(new Share("reading at " + spread.gaps().get(gap).id(), "readings", u * u / all));
        shares.sort(Comparator.comparingDouble(Share::share).reversed());
        return shares;
    }
}
