package fayline.method.fitup.motion;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;

/**
 * The gaps of all stations as straight-line functions of a move, with the turn brought to the size of a shift: the unknowns are
 * dx, dy and Λ · turn, all in mm, Λ being the root mean square distance of the stations from the pivot. Straight about no move,
 * or about a move already known. Immutable.
 */
public final class MoveRows implements WantedLines<MoveRows, Move> {
    private final List<FitRow> rows;
    private final Spot pivot;
    private final double scale;
    private final double[] lever;
    private final double[] gap;

    private MoveRows(List<FitRow> rows, Spot pivot, double scale, double[] lever, double[] gap) {
        this.rows = rows;
        this.pivot = pivot;
        this.scale = scale;
        this.lever = lever;
        this.gap = gap;
    }

    /**
     * Straight about no move.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static MoveRows of(List<FitRow> rows, Spot pivot) {
        List<FitRow> kept = List.copyOf(rows);
        List<Station> stations = kept.stream().map(FitRow::station).toList();
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("no stations, so no move");
        }
        if (stations.stream().map(Station::id).distinct().count() < stations.size()) {
            throw new IllegalArgumentException("two stations share a name: "
                    + stations.stream().map(Station::id).toList());
        }
        double[] lever = stations.stream().mapToDouble(s -> s.leverMm(pivot)).toArray();
        double[] gap = kept.stream().mapToDouble(FitRow::gapMm).toArray();
        return new MoveRows(kept, pivot, scaleLengthMm(stations, pivot), lever, gap);
    }

    /** Root mean square distance of stations from a pivot; 1 where all stand on it. */
    public static double scaleLengthMm(List<Station> stations, Spot pivot) {
        double square = 0;
        for (Station s : stations) {
            double d = s.at().distanceMm(pivot);
            square += d * d;
        }
        double root = Math.sqrt(square / stations.size());
        return root > 0 ? root : 1;
    }

    /** The same gaps, straight about a move; the unknowns stay the whole move, so limits do not change. */
    @Override
    public MoveRows about(Move known) {
        double[] turned = new double[lever.length];
        double[] level = new double[lever.length];
        double c = Math.cos(known.turnRad());
        double s = Math.sin(known.turnRad());
        for (int i = 0; i < turned.length; i++) {
            Station at = rows.get(i).station();
            double rx = at.at().xMm() - pivot.xMm();
            double ry = at.at().yMm() - pivot.yMm();
            turned[i] = (c * rx - s * ry) * at.ny() - (s * rx + c * ry) * at.nx();
            level[i] =
                    exactMm(i, known) + at.nx() * known.dxMm() + at.ny() * known.dyMm() + turned[i] * known.turnRad();
        }
        return new MoveRows(rows, pivot, scale, turned, level);
    }

    /** The rows behind it. */
    public List<FitRow> rows() {
        return rows;
    }

    /** The pivot of every move here. */
    public Spot pivot() {
        return pivot;
    }

    @Override
    public double scaleLengthMm() {
        return scale;
    }

    @Override
    public double[] coefficients(int row) {
        Station s = rows.get(row).station();
        return new double[] {s.nx(), s.ny(), lever[row] / scale};
    }

    @Override
    public double levelMm(int row) {
        return gap[row];
    }

    @Override
    public double exactMm(int i, Move move) {
        FitRow row = rows.get(i);
        Station s = row.station();
        double rx = s.at().xMm() - pivot.xMm();
        double ry = s.at().yMm() - pivot.yMm();
        double half = Math.sin(move.turnRad() / 2);
        double less = 2 * half * half;
        double sin = Math.sin(move.turnRad());
        double x = less * rx + sin * ry - move.dxMm();
        double y = less * ry - sin * rx - move.dyMm();
        return row.gapMm() + s.nx() * x + s.ny() * y;
    }

    /** The limits of a move in the unknowns. */
    public Box box(MoveLimits limits) {
        return new Box(
                List.of(limits.dxLowMm(), limits.dyLowMm(), limits.turnLowRad() * scale),
                List.of(limits.dxHighMm(), limits.dyHighMm(), limits.turnHighRad() * scale));
    }

    @Override
    public Move move(List<Double> unknowns) {
        return new Move(unknowns.get(0), unknowns.get(1), unknowns.get(2) / scale);
    }

    @Override
    public double[] unknowns(Move move) {
        return new double[] {move.dxMm(), move.dyMm(), move.turnRad() * scale};
    }

    @Override
    public int unknowns() {
        return 3;
    }

    @Override
    public int shifts() {
        return 2;
    }

    @Override
    public int count() {
        return gap.length;
    }

    @Override
    public Wanted wanted(int row) {
        FitRow r = rows.get(row);
        String id = r.station().id();
        return new Wanted(id, id, r.lowerMm(), r.nominalMm(), r.upperMm(), r.minimumMm(), r.weight());
    }
}
