package fayline.method.fitup.chain;

import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.uncertainty.Distribution;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The hand-checked chain of three bonds, from its case file. */
public final class ThreeBonds {
    /** The case. */
    public static final FitCase CASE = FitCase.read("own/fitup/chain-three-bonds");

    private ThreeBonds() {}

    /** The chain. */
    public static Chain chain() {
        Node in = CASE.inputs();
        return Chain.of(
                in.get("links").items().stream().map(ThreeBonds::link).toList(),
                in.get("stations").items().stream().map(ThreeBonds::station).toList(),
                OptionalDouble.of(in.number("uCommonReading")),
                Set.of(),
                7);
    }

    private static Spot spot(Node n) {
        return new Spot(n.numbers().get(0), n.numbers().get(1));
    }

    private static Link link(Node n) {
        Scheme scheme = Scheme.of(
                n.text("name"),
                n.get("indexPoints").items().stream()
                        .<Locator>map(p -> new Locator.Known(
                                Stop.fixed(new Station(
                                        p.text("id"),
                                        new Spot(p.number("x"), p.number("y")),
                                        p.number("nx"),
                                        p.number("ny"))),
                                Distribution.normal(0, p.number("std"))))
                        .toList());
        List<Double> dx = n.get("moveLimits").get("dx").numbers();
        List<Double> dy = n.get("moveLimits").get("dy").numbers();
        List<Double> turn = n.get("moveLimits").get("thetaDeg").numbers();
        MoveLimits room = new MoveLimits(
                dx.get(0), dx.get(1), dy.get(0), dy.get(1), Math.toRadians(turn.get(0)), Math.toRadians(turn.get(1)));
        boolean open = !n.text("name").startsWith("door");
        if (!n.get("datumMarks").isThere()) {
            return new Link(
                    n.text("name"),
                    n.text("part"),
                    n.text("carrier"),
                    spot(n.get("pivot")),
                    scheme,
                    Placement.SAME,
                    java.util.Optional.empty(),
                    open,
                    room,
                    false);
        }
        DatumFit marks = DatumFitCalculator.calculate(n.get("datumMarks").items().stream()
                .map(m -> new DatumMark(
                        m.text("id"),
                        spot(m.get("bench")),
                        spot(m.get("inPlace")),
                        m.number("stdBench"),
                        m.number("stdInPlace")))
                .toList());
        return Link.onBench(
                n.text("name"), n.text("part"), n.text("carrier"), spot(n.get("pivot")), scheme, marks, open, room);
    }

    private static ChainStation station(Node n) {
        return new ChainStation(
                FitRow.of(
                        new Station(
                                n.text("id"), new Spot(n.number("x"), n.number("y")), n.number("nx"), n.number("ny")),
                        n.number("gap"),
                        n.number("lower"),
                        n.number("nominal"),
                        n.number("upper")),
                n.text("on"),
                n.text("against"),
                OptionalDouble.of(n.number("uReading")));
    }
}
