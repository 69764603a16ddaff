package fayline.method.fitup.odds;

import fayline.basis.numeric.RandomStream;
import fayline.method.fitup.odds.GapTrialsResult.StationTrials;
import fayline.method.uncertainty.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Draws the whole fit again and again, in blocks of ten thousand, until every gap's mean, standard deviation and 95 % interval
 * stand still in the second digit of its standard deviation and the chance of all gaps to half a hundredth [jcgm101], 7.9.
 * Each block draws from a stream of its own and blocks are judged in order, so the number of threads does not show.
 */
public final class GapTrialsCalculator {
    private static final int BLOCK = 10_000;
    private static final int LEAST_BLOCKS = 2;
    private static final int MOST_BLOCKS = 200;
    private static final int AT_ONCE = 8;
    private static final double CHANCE_STANDS = 0.005;
    private static final double TAIL = 0.025;
    private static final int PICTURE = 64;
    private static final int MIDDLE = TrialBlock.STEPS / 2;

    private GapTrialsCalculator() {}

    /** Draws and counts. */
    public static GapTrialsResult calculate(GapTrials question) {
        GapSpread spread = question.spread();
        List<Axis> axes = Axis.all(spread.sources());
        double[][] effects = Axis.effects(spread);
        int least = (int) Math.max(LEAST_BLOCKS, (question.leastTrials() + BLOCK - 1) / BLOCK);
        TrialBlock all = new TrialBlock(spread);
        Steadiness steadiness = new Steadiness(spread.gaps().size());
        int blocks = 0;
        boolean settled = false;
        while (!settled && blocks < MOST_BLOCKS) {
            int from = blocks;
            int to = Math.min(MOST_BLOCKS, from < least ? Math.min(least, from + AT_ONCE) : from + AT_ONCE);
            List<TrialBlock> drawn = IntStream.range(from, to)
                    .parallel()
                    .mapToObj(b -> {
                        TrialBlock block = new TrialBlock(spread);
                        block.draw(spread, axes, effects, new RandomStream(question.seed(), b), BLOCK);
                        return block;
                    })
                    .toList();
            for (TrialBlock block : drawn) {
                all.add(block);
                steadiness.take(block);
                blocks++;
                settled = blocks >= least && steadiness.stands(all, CHANCE_STANDS);
                if (settled) {
                    break;
                }
            }
        }
        return result(question, all, blocks, settled);
    }

    private static GapTrialsResult result(GapTrials question, TrialBlock all, int blocks, boolean settled) {
        List<StationTrials> stations = new ArrayList<>();
        for (int i = 0; i < question.spread().gaps().size(); i++) {
            int first = MIDDLE - MIDDLE / 2;
            int perStep = MIDDLE / PICTURE;
            List<Double> picture = new ArrayList<>();
            for (int p = 0; p < PICTURE; p++) {
                long sum = 0;
                for (int k = 0; k < perStep; k++) {
                    sum += all.count(i, first + p * perStep + k);
                }
                picture.add((double) sum / all.trials());
            }
            stations.add(new StationTrials(
                    question.spread().gaps().get(i).id(),
                    all.meanMm(i),
                    all.deviationMm(i),
                    all.quantileMm(i, TAIL),
                    all.quantileMm(i, 1 - TAIL),
                    Chance.counted(all.inside(i), all.trials(), question.seed()),
                    picture,
                    all.fromMm(i) + first * all.stepMm(i),
                    perStep * all.stepMm(i)));
        }
        return new GapTrialsResult(
                stations, Chance.counted(all.allInside(), all.trials(), question.seed()), blocks, settled);
    }

    /** Keeps the four figures of every gap over the blocks and tells when they stand still. */
    private static final class Steadiness {
        private static final int FIGURES = 4;
        private final double[][] sums;
        private final double[][] squares;
        private int blocks;

        Steadiness(int gaps) {
            sums = new double[gaps][FIGURES];
            squares = new double[gaps][FIGURES];
        }

        void take(TrialBlock b) {
            for (int i = 0; i < sums.length; i++) {
                double[] f = {b.meanMm(i), b.deviationMm(i), b.quantileMm(i, TAIL), b.quantileMm(i, 1 - TAIL)};
                for (int k = 0; k < FIGURES; k++) {
                    sums[i][k] += f[k];
                    squares[i][k] += f[k] * f[k];
                }
            }
            blocks++;
        }

        boolean stands(TrialBlock all, double chanceStands) {
            for (int i = 0; i < sums.length; i++) {
                double u = all.deviationMm(i);
                double allowed = u > 0 ? Math.pow(10, Math.floor(Math.log10(u)) - 1) / 2 : 0;
                for (int k = 0; k < FIGURES && u > 0; k++) {
                    double mean = sums[i][k] / blocks;
                    double variance = Math.max(0, squares[i][k] / blocks - mean * mean);
                    if (!(2 * Math.sqrt(variance / (blocks - 1)) < allowed)) {
                        return false;
                    }
                }
            }
            return 2 * Chance.counted(all.allInside(), all.trials(), 0).standardError() < chanceStands;
        }
    }
}
