package fayline.method.fitup.move;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.OptionalDouble;

/** Reads the inputs of move cases, and makes rows of cases worked by hand. */
public final class MoveCase {
    /** How far a move that is not the only one may lie from another solver's, in mm and degrees. */
    static final double LOOSE = 2e-3;

    private MoveCase() {}

    /** The whole question of a case. */
    public static BestMove question(FitCase c) {
        return new BestMove(
                rows(c.inputs()), pivot(c.inputs()), limits(c.inputs()), List.of(), BestMove.Policy.MIN_NORM);
    }

    static List<FitRow> rows(Node inputs) {
        return inputs.get("stations").items().stream().map(MoveCase::row).toList();
    }

    static Spot pivot(Node inputs) {
        List<Double> p = inputs.get("pivot").numbers();
        return new Spot(p.get(0), p.get(1));
    }

    static MoveLimits limits(Node inputs) {
        Node l = inputs.get("moveLimits");
        List<Double> x = l.get("dx").numbers();
        List<Double> y = l.get("dy").numbers();
        List<Double> t = l.get("thetaDeg").numbers();
        return new MoveLimits(
                x.get(0), x.get(1), y.get(0), y.get(1), Math.toRadians(t.get(0)), Math.toRadians(t.get(1)));
    }

    private static FitRow row(Node n) {
        boolean limited = n.get("lower").isThere();
        double nominal = limited ? (n.number("lower") + n.number("upper")) / 2 : n.number("nominal");
        return new FitRow(
                new Station(n.text("id"), new Spot(n.number("x"), n.number("y")), n.number("nx"), n.number("ny")),
                n.number("gap"),
                limited ? n.number("lower") : nominal - n.number("tolMinus"),
                nominal,
                limited ? n.number("upper") : nominal + n.number("tolPlus"),
                n.get("minGap").isThere() ? OptionalDouble.of(n.number("minGap")) : OptionalDouble.empty(),
                n.get("weight").isThere() ? n.number("weight") : 1,
                n.get("edge").isThere() ? n.text("edge") : "");
    }

    /** A row whose gap is to be between 2.5 and 3.5 mm, 3 at best. */
    static FitRow row(String id, double x, double y, double nx, double ny, double gap) {
        return FitRow.of(new Station(id, new Spot(x, y), nx, ny), gap, 2.5, 3, 3.5);
    }

    /** Holds a move to the one of a case. */
    static void holds(FitCase c, Node wanted, Move m, boolean unique) {
        if (unique) {
            c.holds("dx", wanted, m.dxMm());
            c.holds("dy", wanted, m.dyMm());
            c.holds("thetaDeg", wanted, m.turnDeg());
        } else {
            assertEquals(wanted.number("dx"), m.dxMm(), LOOSE);
            assertEquals(wanted.number("dy"), m.dyMm(), LOOSE);
            assertEquals(wanted.number("thetaDeg"), m.turnDeg(), LOOSE);
        }
    }
}
