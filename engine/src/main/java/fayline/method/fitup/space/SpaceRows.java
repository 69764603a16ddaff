package fayline.method.fitup.space;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Readings as straight-line functions of a move in space; the unknowns are the shift and Λ times the turn, all in mm, Λ the root
 * mean square distance of the readings from the pivot. A reading is v − a · q with a = (m, r × m) for a gap and −(s, r × s) for a
 * flush.
 */
public final class SpaceRows implements WantedLines<SpaceRows, SpaceMove> {
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

    /**
     * Straight about no move.
     *
     * @param readings at least one
     * @param pivot the pivot of every move here, in mm
     * @throws IllegalArgumentException if there is no reading
     */
    public static SpaceRows of(List<SpaceReading> readings, Vector pivot) {
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

    /**
     * The gaps of rows, then flushes; straight about no move.
     *
     * @param gaps rows of gaps, at least one
     * @param flushes readings of flush
     * @param pivot the pivot of every move here, in mm
     * @throws IllegalArgumentException if there is no gap
     */
    public static SpaceRows of(List<FitRow> gaps, List<SpaceReading> flushes, Vector pivot) {
        return of(
                Stream.concat(gaps.stream().map(SpaceReading::gap), flushes.stream())
                        .toList(),
                pivot);
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

    @Override
    public double exactMm(int i, SpaceMove move) {
        SpaceReading r = readings.get(i);
        return r.valueMm() - sign(r) * r.normal().dot(move.carries(r.at(), pivot));
    }

    @Override
    public double scaleLengthMm() {
        return scale;
    }

    @Override
    public int unknowns() {
        return UNKNOWNS;
    }

    @Override
    public int shifts() {
        return UNKNOWNS / 2;
    }

    @Override
    public int count() {
        return level.length;
    }

    @Override
    public double levelMm(int row) {
        return level[row];
    }

    @Override
    public Wanted wanted(int row) {
        SpaceReading r = readings.get(row);
        String named = r.kind() == SpaceReading.Kind.GAP ? r.station() : r.station() + " flush";
        return new Wanted(r.station(), named, r.lowerMm(), r.nominalMm(), r.upperMm(), r.minimumMm(), r.weight());
    }

    @Override
    public double[] unknowns(SpaceMove m) {
        Vector s = m.shiftMm();
        Vector t = m.turnRad().times(scale);
        return new double[] {s.x(), s.y(), s.z(), t.x(), t.y(), t.z()};
    }

    /** Whether a flush is among the readings. */
    boolean flush() {
        return readings.stream().anyMatch(r -> r.kind() == SpaceReading.Kind.FLUSH);
    }

    /** The readings behind it. */
    List<SpaceReading> readings() {
        return readings;
    }

    Vector pivot() {
        return pivot;
    }

    /** The limits of a move in the unknowns. */
    public Box box(SpaceLimits limits) {
        return new Box(list(limits.least()), list(limits.most()));
    }

    private List<Double> list(SpaceMove m) {
        return Arrays.stream(unknowns(m)).boxed().toList();
    }

    @Override
    public double[] coefficients(int i) {
        SpaceReading r = readings.get(i);
        Vector m = r.normal().times(sign(r));
        Vector l = lever[i].times(sign(r) / scale);
        return new double[] {m.x(), m.y(), m.z(), l.x(), l.y(), l.z()};
    }

    @Override
    public SpaceMove move(List<Double> x) {
        return new SpaceMove(
                new Vector(x.get(0), x.get(1), x.get(2)), new Vector(x.get(3), x.get(4), x.get(5)).times(1 / scale));
    }
}
