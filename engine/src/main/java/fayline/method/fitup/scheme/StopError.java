package fayline.method.fitup.scheme;

import fayline.method.fitup.Move;
import fayline.method.fitup.odds.GapSource;
import fayline.method.uncertainty.Distribution;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** An error of stops, before it is told what it does to gaps. */
sealed interface StopError {
    /** What it does to gaps. */
    GapSource onGaps(Settling settling);

    /** What it does to the part. */
    SchemeMotion.MoveError onPart(Settling settling);

    /** How the part goes on the whole; no move where it is as likely one way as the other. */
    Move shift(Settling settling);

    /** What it shifts every gap by on the whole, in mm; zero where it is as likely one way as the other. */
    double shiftMm(Settling settling, int gap);

    /**
     * How much a stop moves for one of the error.
     *
     * @param row place of the stop in the list of rows
     * @param share mm for each mm
     */
    record Effect(int row, double share) {}

    /** An error of one number. */
    record Along(String name, String owner, Distribution spread, List<Effect> effects) implements StopError {
        public Along {
            effects = List.copyOf(effects);
        }

        private double onGap(Settling settling, int gap) {
            return effects.stream()
                    .mapToDouble(e -> settling.weight(gap, e.row()) * e.share())
                    .sum();
        }

        @Override
        public GapSource onGaps(Settling settling) {
            List<Double> all = new ArrayList<>();
            for (int i = 0; i < settling.gaps(); i++) {
                all.add(onGap(settling, i));
            }
            return new GapSource.Along(name, owner, new Distribution(spread.shape(), 0, spread.halfWidth()), all);
        }

        private Move perMm(Settling settling) {
            Move sum = Move.NONE;
            for (Effect e : effects) {
                Move m = settling.motion(e.row());
                sum = new Move(
                        sum.dxMm() + e.share() * m.dxMm(),
                        sum.dyMm() + e.share() * m.dyMm(),
                        sum.turnRad() + e.share() * m.turnRad());
            }
            return sum;
        }

        @Override
        public SchemeMotion.MoveError onPart(Settling settling) {
            return new SchemeMotion.Along(
                    name, owner, new Distribution(spread.shape(), 0, spread.halfWidth()), perMm(settling));
        }

        @Override
        public Move shift(Settling settling) {
            Move m = perMm(settling);
            double mean = spread.mean();
            return new Move(mean * m.dxMm(), mean * m.dyMm(), mean * m.turnRad());
        }

        @Override
        public double shiftMm(Settling settling, int gap) {
            return spread.mean() == 0 ? 0 : spread.mean() * onGap(settling, gap);
        }
    }

    /** A pin's play: two rows, or the one that a slotted hole leaves. */
    record InDisc(String name, String owner, double radiusMm, int rowX, OptionalInt rowY) implements StopError {
        @Override
        public GapSource onGaps(Settling settling) {
            List<Double> x = IntStream.range(0, settling.gaps())
                    .mapToObj(i -> settling.weight(i, rowX))
                    .toList();
            List<Double> y = IntStream.range(0, settling.gaps())
                    .mapToObj(i -> rowY.isPresent() ? settling.weight(i, rowY.getAsInt()) : 0.0)
                    .toList();
            return new GapSource.InDisc(name, owner, radiusMm, x, y);
        }

        @Override
        public SchemeMotion.MoveError onPart(Settling settling) {
            return new SchemeMotion.InDisc(
                    name,
                    owner,
                    radiusMm,
                    settling.motion(rowX),
                    rowY.isPresent() ? settling.motion(rowY.getAsInt()) : Move.NONE);
        }

        @Override
        public Move shift(Settling settling) {
            return Move.NONE;
        }

        @Override
        public double shiftMm(Settling settling, int gap) {
            return 0;
        }
    }
}
