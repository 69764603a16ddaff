package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;
import fayline.app.usecase.calc.form.Kind;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.OptionalDouble;

/** The pieces that the questions of fit-up share, read and written. */
final class Shapes {
    private Shapes() {}

    /** The place and direction of a station. */
    static Form station() {
        return Form.empty()
                .needs("id", Kind.text(), "the mark at the bench")
                .needs("x", Kind.number(), "mm aft (left part) from the frame's origin")
                .needs("y", Kind.number(), "mm up")
                .needs("nx", Kind.number(), "outward normal of the part edge, x")
                .needs("ny", Kind.number(), "outward normal of the part edge, y");
    }

    /** A move. */
    static Form move() {
        return Form.empty()
                .needs("dx", Kind.number(), "mm along x")
                .needs("dy", Kind.number(), "mm up")
                .needs("thetaDeg", Kind.number(), "degrees, counter-clockwise seen from outside");
    }

    /** Limits of a move. */
    static Form moveLimits() {
        return Form.empty()
                .needs("dx", Kind.plane(), "least and most, mm")
                .needs("dy", Kind.plane(), "least and most, mm")
                .needs("thetaDeg", Kind.plane(), "least and most, degrees");
    }

    /** Adds to a station what a fit wants there: limits, or nominal and tolerance; weight, minimum, edge. */
    static Form wanted(Form station) {
        return station.takes("nominal", Kind.number(), "gap wanted, mm")
                .takes("tolMinus", Kind.notNegative(), "how much less is in tolerance, mm")
                .takes("tolPlus", Kind.notNegative(), "how much more is in tolerance, mm")
                .takes("lower", Kind.number(), "least gap in tolerance, mm")
                .takes("upper", Kind.number(), "most gap in tolerance, mm")
                .takes("minGap", Kind.number(), "gap never to be undercut, mm")
                .takes("weight", Kind.positive(), "how much a millimetre here counts")
                .takes("edge", Kind.text(), "the edge of the part it lies on");
    }

    static Station station(Given g) {
        return new Station(g.text("id"), new Spot(g.number("x"), g.number("y")), g.number("nx"), g.number("ny"));
    }

    static List<Station> stations(Given g, String name) {
        return g.objects(name).stream().map(Shapes::station).toList();
    }

    /** The pivot, or the middle of the stations where none is given. */
    static Spot pivot(Given g, List<Station> stations) {
        return g.has("pivot") ? spot(g.numbers("pivot")) : Station.middle(stations);
    }

    static Spot spot(List<Double> xy) {
        return new Spot(xy.get(0), xy.get(1));
    }

    static Move move(Given g) {
        return new Move(g.number("dx"), g.number("dy"), Math.toRadians(g.number("thetaDeg")));
    }

    /** The limits given, or the widest. */
    static MoveLimits moveLimits(Given inputs) {
        return inputs.maybeObject("moveLimits")
                .map(l -> new MoveLimits(
                        l.numbers("dx").get(0),
                        l.numbers("dx").get(1),
                        l.numbers("dy").get(0),
                        l.numbers("dy").get(1),
                        Math.toRadians(l.numbers("thetaDeg").get(0)),
                        Math.toRadians(l.numbers("thetaDeg").get(1))))
                .orElse(MoveLimits.WIDEST);
    }

    /** A row: limits where present, else nominal less and plus the tolerance; a missing nominal is the middle of the limits. */
    static FitRow row(Given g, double gapMm) {
        double nominal = g.number("nominal", (g.number("lower", Double.NaN) + g.number("upper", Double.NaN)) / 2);
        OptionalDouble minimum = g.maybe("minGap");
        return new FitRow(
                station(g),
                gapMm,
                g.number("lower", nominal - g.number("tolMinus", 0)),
                nominal,
                g.number("upper", nominal + g.number("tolPlus", 0)),
                minimum,
                g.number("weight", 1),
                g.text("edge", ""));
    }

    static ObjectNode json(Move move) {
        return Json.object().put("dx", move.dxMm()).put("dy", move.dyMm()).put("thetaDeg", move.turnDeg());
    }

    static ArrayNode json(List<Double> numbers) {
        ArrayNode a = Json.array();
        numbers.forEach(a::add);
        return a;
    }
}
