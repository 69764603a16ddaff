package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.basis.units.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Adhesive m = A t rho (1 + waste), t the mean of a tapered gap; fillets by their section (geometry). Usual bond lines of 0.1 to
 * 3 mm are from memory and shown as a caution only.
 */
public final class AdhesiveMassCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double THIN_M = 0.1e-3;
    private static final double THICK_M = 3e-3;

    private AdhesiveMassCalculator() {}

    /** Answers the question. */
    public static AdhesiveMassResult calculate(AdhesiveMass joint) {
        double volume = 0;
        List<Figure.Input> inputs = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        boolean sound = joint.density().si() > 0 && joint.waste().ratio() >= 0;
        if (joint.line().isPresent()) {
            AdhesiveMass.BondLine line = joint.line().get();
            double a = line.gapStart().metres();
            double b = line.gapEnd().metres();
            sound &= line.area().squareMetres() >= 0 && a >= 0 && b >= 0;
            volume += line.area().squareMetres() * (a + b) / 2;
            inputs.add(new Figure.Input("faying area", FORMAT.area(line.area()), Figure.Origin.ENTERED));
            inputs.add(new Figure.Input(
                    "bond line",
                    a == b
                            ? FORMAT.length(line.gapStart())
                            : FORMAT.length(line.gapStart()) + " to " + FORMAT.length(line.gapEnd()),
                    Figure.Origin.ENTERED));
            if (Math.min(a, b) < THIN_M || Math.max(a, b) > THICK_M) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        "bond line",
                        "A gap outside 0.1 to 3 mm is more than most adhesives are made for: ask the data sheet.",
                        "common practice, no source"));
            }
        }
        if (joint.fillet().isPresent()) {
            AdhesiveMass.Fillet f = joint.fillet().get();
            double r = f.radius().metres();
            sound &= r >= 0 && f.length().metres() >= 0;
            volume += f.length().metres() * r * r * (f.shape() == AdhesiveMass.Shape.CONCAVE ? 1 - Math.PI / 4 : 0.5);
            inputs.add(new Figure.Input("fillet length", FORMAT.length(f.length()), Figure.Origin.ENTERED));
            inputs.add(new Figure.Input("fillet radius", FORMAT.length(f.radius()), Figure.Origin.ENTERED));
        }
        if (!sound) {
            return new AdhesiveMassResult(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(new Finding(
                            Severity.STOP,
                            "adhesive",
                            "Areas, gaps, radii and waste must not be negative, the density positive: not covered.",
                            "geometry")));
        }
        inputs.add(new Figure.Input(
                "waste, of what stays in the joint", FORMAT.percent(joint.waste()), Figure.Origin.ENTERED));
        Mass stays = new Mass(volume * joint.density().si());
        Mass weigh = stays.times(1 + joint.waste().ratio());
        Figure figure = new Figure(
                "Mixed adhesive to weigh",
                FORMAT.mass(weigh),
                "(area x mean gap + fillet section x length) x density x (1 + waste)",
                inputs,
                "geometry",
                findings.stream().map(Finding::sentence).toList());
        return new AdhesiveMassResult(
                Optional.of(stays),
                Optional.of(weigh),
                Optional.of(new Volume(volume * (1 + joint.waste().ratio()))),
                Optional.of(figure),
                findings);
    }
}
