package fayline.method.fitup.space;

import fayline.basis.finding.Phrase;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.DeterminacyCalculator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which of the six motions the readings can know; shares and thresholds as in the plane.
 *
 * @param rank how many of the six motions are known
 * @param singularValues of the rows with turns brought to shifts, largest first
 * @param scaleLengthMm the length that did so
 * @param free directions that no reading notices, as unit moves (turns at the scale length)
 * @param weak the motion that is known but badly, if there is one
 */
public record SpaceDeterminacy(
        int rank, List<Double> singularValues, double scaleLengthMm, List<SpaceMove> free, Optional<WeakMotion> weak) {
    private static final int MOTIONS = 6;

    /** Keeps its own copies. */
    public SpaceDeterminacy {
        singularValues = List.copyOf(singularValues);
        free = List.copyOf(free);
    }

    /**
     * A motion that hardly changes the readings.
     *
     * @param direction as a unit move (turns at the scale length)
     * @param meaning in plain words
     * @param ratio smallest over largest singular value
     * @param growth how many mm along it one mm of error in every reading may become (root of sum of squares)
     */
    public record WeakMotion(SpaceMove direction, Phrase meaning, double ratio, double growth) {}

    /** Whether every motion is known. */
    public boolean determined() {
        return free.isEmpty();
    }

    static SpaceDeterminacy of(SpaceRows rows) {
        LeastSquares.Fit known = LeastSquares.fit(rows.equations().unweighted());
        List<Double> values = known.singularValues();
        double last = values.get(MOTIONS - 1);
        double ratio = last / values.get(0);
        Optional<WeakMotion> weak = Optional.empty();
        if (known.determined() && ratio < DeterminacyCalculator.WEAK_SHARE) {
            SpaceMove m = rows.move(known.directions().get(MOTIONS - 1));
            weak = Optional.of(new WeakMotion(m, SpaceMotionWords.weak(m, rows), ratio, 1 / last));
        }
        return new SpaceDeterminacy(
                known.rank(),
                values,
                rows.scaleLengthMm(),
                known.directions().subList(known.rank(), MOTIONS).stream()
                        .map(rows::move)
                        .toList(),
                weak);
    }

    List<Phrase> freeWords(SpaceRows rows) {
        if (free.isEmpty()) {
            return List.of();
        }
        return free.size() == 1
                ? List.of(SpaceMotionWords.several(rank), SpaceMotionWords.free(free.get(0), rows))
                : Stream.of(SpaceMotionWords.several(rank), SpaceMotionWords.open(free, rows))
                        .filter(w -> !w.isEmpty())
                        .toList();
    }
}
