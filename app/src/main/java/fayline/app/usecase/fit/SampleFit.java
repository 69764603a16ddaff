package fayline.app.usecase.fit;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.odds.ExpectedGap;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.odds.GapSpread;
import fayline.method.fitup.odds.GapTrials;
import fayline.method.fitup.odds.GapTrialsCalculator;
import fayline.method.fitup.odds.GapTrialsResult;
import fayline.method.fitup.trim.NeighbourPair;
import fayline.method.fitup.trim.TrimCalculator;
import fayline.method.fitup.trim.TrimQuestion;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.TrimRow;
import fayline.method.fitup.trim.TrimRules;
import fayline.method.uncertainty.Distribution;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

/** Invented fits of any size, the same for the same seed: a window of 700 by 460 mm with stations all round. For measuring. */
public final class SampleFit {
    private static final double TAPE_MM = 0.29;
    private static final double WAVE_MM = 70;

    private SampleFit() {}

    /** The best move of a fit of so many stations. */
    public static BestMoveResult bestMove(int stations, int seed) {
        return BestMoveCalculator.calculate(BestMove.of(rows(stations, seed), MoveLimits.of(5, 5, Math.toRadians(1))));
    }

    private static List<FitRow> rows(int stations, int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Move off = new Move(0.4 - random.nextDouble(), 0.4 - random.nextDouble(), 0.002 * random.nextDouble());
        Spot middle = new Spot(0, 0);
        List<FitRow> rows = new ArrayList<>();
        for (int i = 0; i < stations; i++) {
            int side = i * 4 / stations;
            double along = (i * 4.0 / stations - side) * 2 - 1 + 1.0 / stations;
            Station s = switch (side) {
                case 0 -> new Station("S" + i, new Spot(350 * along, -230), 0, -1);
                case 1 -> new Station("S" + i, new Spot(350, 230 * along), 1, 0);
                case 2 -> new Station("S" + i, new Spot(-350 * along, 230), 0, 1);
                default -> new Station("S" + i, new Spot(-350, -230 * along), -1, 0);
            };
            double gap = FitRow.of(s, 3, 2.5, 3, 3.5).gapAfterMm(off, middle) + 0.3 * (random.nextDouble() - 0.5);
            rows.add(FitRow.of(s, gap, 2.5, 3, 3.5));
        }
        return rows;
    }

    /** The least trim of a fit of so many stations whose part is too large here and there, every edge free to cut. */
    public static TrimResult trim(int stations, int seed) {
        List<TrimRow> rows = new ArrayList<>();
        List<NeighbourPair> pairs = new ArrayList<>();
        for (FitRow r : rows(stations, seed)) {
            Station s = r.station();
            boolean level = s.ny() != 0;
            String edge = level ? (s.ny() < 0 ? "lower" : "upper") : s.nx() > 0 ? "aft" : "forward";
            double waves = Math.sin((s.at().xMm() + s.at().yMm()) / WAVE_MM);
            double each = (level ? 700 : 460) * 4.0 / stations;
            TrimRow row = new TrimRow(
                    new FitRow(s, r.gapMm() - 0.35 + 0.4 * waves, 2.5, 3, 3.8, OptionalDouble.empty(), 1, edge),
                    each,
                    3,
                    0);
            if (!rows.isEmpty() && rows.get(rows.size() - 1).row().edge().equals(edge)) {
                pairs.add(new NeighbourPair(
                        rows.get(rows.size() - 1).row().station().id(), s.id(), each));
            }
            rows.add(row);
        }
        return TrimCalculator.calculate(new TrimQuestion(
                rows,
                pairs,
                new Spot(0, 0),
                MoveLimits.of(5, 5, Math.toRadians(1)),
                TrimRules.usual(List.of("lower", "aft", "upper", "forward"))));
    }

    /** Trials of so many gaps on three stops. */
    public static GapTrialsResult trials(int stations, long trials, int seed) {
        List<ExpectedGap> gaps = rows(stations, 1).stream()
                .map(r -> new ExpectedGap(r.station().id(), r.nominalMm(), 2.6, 3.4, 0.06))
                .toList();
        double[] turn = new double[stations];
        Arrays.setAll(turn, i -> 1 - 2.0 * i / stations);
        List<GapSource> sources = List.of(
                along(stations, "stop 1", i -> 1.0),
                along(stations, "stop 2", i -> turn[i]),
                along(stations, "stop 3", i -> -turn[i] * turn[i]));
        return GapTrialsCalculator.calculate(new GapTrials(new GapSpread(gaps, sources), trials, seed));
    }

    private static GapSource along(int stations, String name, IntToDoubleFunction weight) {
        List<Double> weights = new ArrayList<>();
        for (int i = 0; i < stations; i++) {
            weights.add(weight.applyAsDouble(i));
        }
        return new GapSource.Along(name, name, Distribution.normal(0, TAPE_MM), weights);
    }
}
