package fayline.method.fitup.frame.spring;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.FrameStiffness;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The part alone on its fixture: influence matrix C of the clamps, its inverse, and the shape and forces of one millimetre of
 * deviation at each clamp [liu-hu1997].
 */
final class Influence {
    private static final double DEPENDENT = 1e-10;
    private static final double NEARLY_DEPENDENT = 1e-5;

    private final List<Clamp> clamps;
    private final List<NodalField> byForce = new ArrayList<>();
    private final DenseMatrix c;
    private final DenseMatrix scaled;
    private final double least;

    /**
     * Pushes at every clamp in turn.
     *
     * @param held the part on its fixture supports, which hold it
     */
    Influence(FrameStiffness.Held held, int nodes, List<Clamp> clamps) {
        this.clamps = clamps;
        for (Clamp clamp : clamps) {
            byForce.add(held.solve(NodalField.zero(nodes).with(clamp.at(), 1)));
        }
        int n = clamps.size();
        double[][] rows = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rows[i][j] = (byForce.get(j).get(clamps.get(i).at())
                                + byForce.get(i).get(clamps.get(j).at()))
                        / 2;
            }
        }
        this.c = DenseMatrix.of(rows);
        double[][] unit = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                unit[i][j] = rows[i][j] / Math.sqrt(rows[i][i] * rows[j][j]);
            }
        }
        this.scaled = DenseMatrix.of(unit);
        this.least = n == 1 ? 1 : scaled.symmetricEigen().values().get(0, 0);
    }

    /** Whether a clamp's place follows from the others, so that no force can be told. */
    boolean dependent() {
        return least < DEPENDENT;
    }

    /** Whether that is nearly so: forces against each other grow large. */
    boolean nearlyDependent() {
        return least < NEARLY_DEPENDENT;
    }

    /** The two clamps that are most alike. */
    List<Clamp> mostAlike() {
        List<Clamp> pair = List.of(clamps.get(0), clamps.get(clamps.size() - 1));
        double most = 0;
        for (int i = 0; i < clamps.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (Math.abs(scaled.get(i, j)) > most) {
                    most = Math.abs(scaled.get(i, j));
                    pair = List.of(clamps.get(j), clamps.get(i));
                }
            }
        }
        return pair;
    }

    /** K_c = C⁻¹, where the clamps are independent. */
    DenseMatrix stiffness() {
        return c.inverse().orElseThrow();
    }

    /** The part's shape for one millimetre of deviation at each clamp and none at the others. */
    List<NodalField> shapes(DenseMatrix kc) {
        List<NodalField> shapes = new ArrayList<>();
        for (int j = 0; j < clamps.size(); j++) {
            NodalField shape = byForce.get(j).scaled(kc.get(j, j));
            for (int i = 0; i < clamps.size(); i++) {
                if (i != j) {
                    shape = shape.plus(byForce.get(i).scaled(kc.get(i, j)));
                }
            }
            shapes.add(shape);
        }
        return shapes;
    }

    /** The forces that hold a shape: at the clamps and, as reactions, at the fixture supports; nothing acts elsewhere. */
    NodalField forces(FrameStiffness part, NodalField shape, List<NodeFreedom> supports) {
        NodalField all = part.times(shape);
        Set<NodeFreedom> places = new LinkedHashSet<>(supports);
        clamps.forEach(k -> places.add(k.at()));
        NodalField forces = NodalField.zero(all.nodes());
        for (NodeFreedom at : places) {
            forces = forces.with(at, all.get(at));
        }
        return forces;
    }
}
