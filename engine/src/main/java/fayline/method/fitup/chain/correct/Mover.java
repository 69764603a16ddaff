package fayline.method.fitup.chain.correct;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.Link;
import java.util.List;

/**
 * Something rigid that can be moved, and how much each gap closes for its move.
 *
 * @param name what it is called
 * @param room how far, in the axes in which its move is told
 * @param rows a row for each gap: closing per mm along x, per mm along y, per radian
 */
record Mover(String name, MoveLimits room, DenseMatrix rows) {
    static Mover of(Chain chain, int link) {
        Link l = chain.links().get(link);
        double[][] rows = new double[chain.stations().size()][];
        for (int i = 0; i < rows.length; i++) {
            Station s = chain.stations().get(i).row().station();
            // The normal in the link's own axes closes as the move does in the final ones.
            Move normal = l.placement().toBench(new Move(s.nx(), s.ny(), 0));
            rows[i] = chain.acts(link, chain.stations().get(i))
                    ? new double[] {normal.dxMm(), normal.dyMm(), s.leverMm(l.finalPivot())}
                    : new double[3];
        }
        return new Mover(l.name(), l.room(), DenseMatrix.of(rows));
    }

    static Mover of(Chain chain, Neighbour neighbour) {
        double[][] rows = new double[chain.stations().size()][];
        for (int i = 0; i < rows.length; i++) {
            Station s = chain.stations().get(i).row().station();
            rows[i] = chain.stations().get(i).against().equals(neighbour.name())
                    ? new double[] {-s.nx(), -s.ny(), -s.leverMm(neighbour.pivot())}
                    : new double[3];
        }
        return new Mover(neighbour.name(), neighbour.room(), DenseMatrix.of(rows));
    }

    static Mover of(String name, MoveLimits room, Spot pivot, List<FitRow> rows) {
        return new Mover(
                name,
                room,
                DenseMatrix.of(rows.stream()
                        .map(r -> new double[] {
                            r.station().nx(), r.station().ny(), r.station().leverMm(pivot)
                        })
                        .toArray(double[][]::new)));
    }

    /** The distance at which a turn counts like a shift: root mean square of the levers. */
    double lengthMm() {
        double squares = 0;
        for (int i = 0; i < rows.rows(); i++) {
            squares += rows.get(i, 2) * rows.get(i, 2);
        }
        return squares > 0 ? Math.sqrt(squares / rows.rows()) : 1;
    }
}
