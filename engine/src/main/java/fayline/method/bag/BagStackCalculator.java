package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The whole bag of one part, layer by layer from the part outward in the order of [ac43-13-1b] par. 3-4. Every layer is the part
 * with its margin times the surface factor; the film has the tape line, a hand edge and its pleats; ports by area. Margins,
 * factors and port counts are common practice, no source.
 */
public final class BagStackCalculator {
    private static final double ONE_PORT_M2 = 1.0;
    private static final double MORE_PER_PORT_M2 = 3.0;
    private static final String CP = "common practice, no source";

    private BagStackCalculator() {}

    /** Answers the question. */
    public static BagStackResult calculate(BagStack stack) {
        BagStack.Margins m = stack.margins();
        List<Figure> figures = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Optional<Area> peel = layer("Peel ply", stack, m.peelPly(), figures, findings);
        Optional<Area> perforated = layer("Perforated film", stack, m.perforatedFilm(), figures, findings);
        Optional<Area> breather = layer("Breather", stack, m.breather(), figures, findings);
        if (peel.isEmpty()
                || perforated.isEmpty()
                || breather.isEmpty()
                || stack.pleats() < 0
                || stack.pleatHeight().metres() < 0) {
            List<Finding> all = findings.isEmpty()
                    ? List.of(new Finding(
                            Severity.STOP, "bag", "Pleats and their height must not be negative: not covered.", CP))
                    : findings.stream().distinct().toList();
            return new BagStackResult(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    List.of(),
                    all);
        }
        BagEdgeResult edge = BagEdgeCalculator.calculate(edge(stack));
        figures.addAll(edge.figures());
        Optional<Area> film = edge.filmArea().map(f -> f.times(stack.surfaceFactor()));
        double part = CoverCalculator.calculate(new Cover(stack.shape(), new Length(0), stack.surfaceFactor()))
                .area()
                .orElse(new Area(0))
                .squareMetres();
        int ports = part <= ONE_PORT_M2 ? 1 : Math.max(2, (int) Math.ceil(part / MORE_PER_PORT_M2 - 1e-9));
        findings.add(new Finding(
                Severity.NOTE,
                "bag",
                "Ports needed: " + ports + ", the gauge at the far end from the source.",
                "[ac43-13-1b]"));
        return new BagStackResult(
                peel, perforated, breather, film, edge.tape(), edge.rolls(), OptionalInt.of(ports), figures, findings);
    }

    private static Optional<Area> layer(
            String name, BagStack stack, Length margin, List<Figure> figures, List<Finding> findings) {
        CoverResult r = CoverCalculator.calculate(new Cover(stack.shape(), margin, stack.surfaceFactor()));
        findings.addAll(r.findings());
        r.figure()
                .ifPresent(f ->
                        figures.add(new Figure(name, f.value(), f.formula(), f.inputs(), f.source(), f.cautions())));
        return r.area();
    }

    /** The tape rectangle of the part; an outline counts as the square of its area, its tape line keeps its own length. */
    private static BagEdge edge(BagStack stack) {
        double out = stack.margins().breather().metres()
                + stack.margins().tapeBeyondBreather().metres();
        Length a;
        Length b;
        double line;
        if (stack.shape() instanceof Cover.Rectangle r) {
            a = new Length(r.length().metres() + 2 * out);
            b = new Length(r.width().metres() + 2 * out);
            line = 2 * (a.metres() + b.metres());
        } else {
            Cover.Convex c = (Cover.Convex) stack.shape();
            // The rectangle of the outline's own area and perimeter, or the square where there is none.
            double half = c.perimeter().metres() / 2;
            double root = Math.sqrt(Math.max(0, half * half / 4 - c.area().squareMetres()));
            double side = Math.sqrt(c.area().squareMetres());
            boolean rectangle = half * half / 4 >= c.area().squareMetres();
            a = new Length((rectangle ? half / 2 + root : side) + 2 * out);
            b = new Length((rectangle ? half / 2 - root : side) + 2 * out);
            line = c.perimeter().metres() + 2 * Math.PI * out;
        }
        int perimeterPleats = stack.pleats();
        int onLong = (int) Math.floor(perimeterPleats * a.metres() / (2 * (a.metres() + b.metres()) + 1e-12));
        int onShort = Math.max(0, (perimeterPleats - 2 * onLong) / 2);
        return new BagEdge(
                a,
                b,
                onLong,
                onShort,
                stack.pleatHeight(),
                stack.margins().handEdge(),
                stack.tapeRoll(),
                stack.tapeSpare(),
                new Length(line),
                perimeterPleats - 2 * (onLong + onShort));
    }
}
