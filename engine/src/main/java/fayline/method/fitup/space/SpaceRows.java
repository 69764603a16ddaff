package fayline.method.fitup.space;

import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.motion.Straight;
import java.util.Arrays;
import java.util.List;

/**
 * Readings as straight-line functions of a move in space; the unknowns are the shift and Λ times the turn, all in mm, Λ the root
 * mean square distance of the readings from the pivot. A reading is v − a · q with a = (m, r × m) for a gap and −(s, r × s) for a
 * flush.
 */
final class SpaceRows implements Straight<SpaceRows, SpaceMove> {
    private static final double STILL_MM = 1e-4;
    private static final double STILL_RAD = Math.toRadians(1e-5);
    private static final int UNKNOWNS = 6;

    private final List<SpaceReading> readings;
    private final Vector pivot;
    private final double scale;
    private final Vector[] lever;
    private final double[] level;

    private SpaceRows(List<SpaceReading> readings, Vector pivot, double scale, Vector[] lever, double[] level) {
        this.readings = readings;
        this.pivot = pivot;
        this.scale = scale;
        this.lever = lever;
        this.level = level;
    }

    static SpaceRows of(List<SpaceReading> readings, Vector pivot) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no readings, so no move");
        }
        double square = 0;
        Vector[] lever = new Vector[readings.size()];
        double[] level = new double[lever.length];
        for (int i = 0; i < lever.length; i++) {
            SpaceReading r = readings.get(i);
            Vector arm = r.at().minus(pivot);
            square += arm.dot(arm);
            lever[i] = arm.cross(r.normal());
            level[i] = r.valueMm();
        }
        double root = Math.sqrt(square / lever.length);
        return new SpaceRows(List.copyOf(readings), pivot, root > 0 ? root : 1, lever, level);
    }

    private static double sign(SpaceReading r) {
        return r.kind() == SpaceReading.Kind.GAP ? 1 : -1;
    }

    @Override
    public SpaceRows about(SpaceMove known) {
        Vector[] turned = new Vector[lever.length];
        double[] at = new double[lever.length];
        for (int i = 0; i < turned.length; i++) {
            SpaceReading r = readings.get(i);
            Vector moment = r.at().minus(pivot).turned(known.turnRad()).cross(r.normal());
            turned[i] = slope(known.turnRad(), moment);
            at[i] = exactMm(i, known) + sign(r) * (r.normal().dot(known.shiftMm()) + turned[i].dot(known.turnRad()));
        }
        return new SpaceRows(readings, pivot, scale, turned, at);
    }

    /** How a moment of the turned part acts on a change of the rotation vector: the transposed left Jacobian. */
    private static Vector slope(Vector turn, Vector moment) {
        double angle = turn.length();
        if (angle < 1e-12) {
            return moment;
        }
        double half = Math.sin(angle / 2) / angle;
        Vector once = moment.cross(turn);
        Vector twice = turn.cross(turn.cross(moment));
        return moment.plus(once.times(2 * half * half))
                .plus(twice.times((angle - Math.sin(angle)) / (angle * angle * angle)));
    }

    private double exactMm(int i, SpaceMove move) {
        SpaceReading r = readings.get(i);
        Vector arm = r.at().minus(pivot);
        Vector went = arm.turned(move.turnRad()).minus(arm).plus(move.shiftMm());
        return r.valueMm() - sign(r) * r.normal().dot(went);
    }

    @Override
    public double errorMm(SpaceMove move) {
        List<Double> straight = valuesMm(move);
        double most = 0;
        for (int i = 0; i < level.length; i++) {
            most = Math.max(most, Math.abs(straight.get(i) - exactMm(i, move)));
        }
        return most;
    }

    @Override
    public boolean still(SpaceMove before, SpaceMove after) {
        return after.shiftMm().minus(before.shiftMm()).length() < STILL_MM
                && after.turnRad().minus(before.turnRad()).length() < STILL_RAD;
    }

    double scaleLengthMm() {
        return scale;
    }

    List<Double> valuesMm(SpaceMove move) {
        double[] after = new double[level.length];
        for (int i = 0; i < after.length; i++) {
            SpaceReading r = readings.get(i);
            after[i] = level[i] - sign(r) * (r.normal().dot(move.shiftMm()) + lever[i].dot(move.turnRad()));
        }
        return Arrays.stream(after).boxed().toList();
    }

    private double[] coefficients(int i) {
        SpaceReading r = readings.get(i);
        Vector m = r.normal().times(sign(r));
        Vector l = lever[i].times(sign(r) / scale);
        return new double[] {m.x(), m.y(), m.z(), l.x(), l.y(), l.z()};
    }

    Equations equations() {
        Equations.Builder all = Equations.of(UNKNOWNS);
        for (int i = 0; i < level.length; i++) {
            all.row(
                    coefficients(i),
                    level[i] - readings.get(i).nominalMm(),
                    readings.get(i).weight());
        }
        return all.build();
    }

    LinearRows hard(SpaceLimits limits) {
        LinearRows.Builder all = LinearRows.within(unknowns(limits.least()), unknowns(limits.most()));
        for (int i = 0; i < level.length; i++) {
            if (readings.get(i).minimumMm().isPresent()) {
                all.row(
                        coefficients(i),
                        Double.NEGATIVE_INFINITY,
                        level[i] - readings.get(i).minimumMm().getAsDouble());
            }
        }
        return all.build();
    }

    private double[] unknowns(SpaceMove m) {
        Vector s = m.shiftMm();
        Vector t = m.turnRad().times(scale);
        return new double[] {s.x(), s.y(), s.z(), t.x(), t.y(), t.z()};
    }

    SpaceMove move(List<Double> x) {
        return new SpaceMove(
                new Vector(x.get(0), x.get(1), x.get(2)), new Vector(x.get(3), x.get(4), x.get(5)).times(1 / scale));
    }
}
