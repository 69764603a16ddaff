package fayline.method.cure.pot;

import fayline.method.cure.CureLaw;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Pot life against mass at one temperature: a power law t = t1 (m1/m)^n between neighbouring data-sheet masses. Below the
 * smallest mass its life is held (a smaller mass lives longer, which is not counted); above the largest no claim is made. With
 * one data-sheet mass alone the exponent 1 is assumed up to four times that mass: heat that cannot leave shortens the life at
 * most about in proportion, so the estimate lies on the safe side of the exponents of 0.4 to 0.7 that sheets with two masses
 * show (from memory). A stated exponent holds for any mass.
 */
final class MassLaw {
    static final double ONE_MASS_EXPONENT = 1;
    static final double ONE_MASS_REACH = 4;

    private final List<Node> nodes;
    private final OptionalDouble stated;

    private MassLaw(List<Node> nodes, OptionalDouble stated) {
        this.nodes = nodes;
        this.stated = stated;
    }

    /** The law at a temperature from the sheet's points of one container shape, which must not be empty. */
    static MassLaw of(CureSheet sheet, List<SheetPoint> points, double kelvins, OptionalDouble stated) {
        TreeMap<Double, List<SheetPoint>> byMass = new TreeMap<>();
        for (SheetPoint p : points) {
            byMass.computeIfAbsent(p.mass().map(m -> m.kilograms()).orElse(0.0), k -> new ArrayList<>())
                    .add(p);
        }
        if (byMass.size() > 1) {
            byMass.remove(0.0);
        }
        CureLaw widest = CureLaw.of(withPoints(sheet, points), CureState.POT_LIFE)
                .orElseThrow(() -> new IllegalArgumentException("no pot-life point"));
        List<Node> nodes = new ArrayList<>();
        byMass.forEach((mass, group) -> {
            CureLaw own = CureLaw.through(sheet, CureState.POT_LIFE, group);
            boolean alone = own.coldest().equals(own.hottest());
            // A mass with one temperature borrows the law of the mass that has several.
            double factor = alone
                    ? widest.rule().factorAt(kelvins) / widest.rule().factorAt(own.reference())
                    : own.rule().factorAt(kelvins);
            nodes.add(new Node(mass, own.time().seconds() / factor, alone ? widest : own));
        });
        return new MassLaw(nodes, stated);
    }

    private static CureSheet withPoints(CureSheet sheet, List<SheetPoint> points) {
        return new CureSheet(points, sheet.activationEnergy(), sheet.kinetics(), sheet.glass());
    }

    /** Points of the asked shape, else those of the other. */
    static List<SheetPoint> ofShape(List<SheetPoint> all, PotShape shape) {
        List<SheetPoint> same = all.stream().filter(p -> p.shape() == shape).toList();
        return same.isEmpty() ? all : same;
    }

    CureLaw law() {
        return nodes.get(0).law();
    }

    boolean massless() {
        return nodes.size() == 1 && nodes.get(0).kilograms() == 0;
    }

    double smallest() {
        return nodes.get(0).kilograms();
    }

    /** The largest mass with a claim, in kg; infinite where the exponent is stated or mass does not count. */
    double largest() {
        if (massless() || stated.isPresent()) {
            return Double.POSITIVE_INFINITY;
        }
        double last = nodes.get(nodes.size() - 1).kilograms();
        return nodes.size() == 1 ? last * ONE_MASS_REACH : last;
    }

    boolean estimatedAt(double kilograms) {
        return !massless() && stated.isEmpty() && nodes.size() == 1 && kilograms > smallest();
    }

    /** The exponent over the whole range of masses, where the sheet or a person gives one. */
    OptionalDouble exponent() {
        if (stated.isPresent()) {
            return stated;
        }
        if (nodes.size() < 2) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(exponent(nodes.get(0), nodes.get(nodes.size() - 1)));
    }

    private static double exponent(Node a, Node b) {
        return Math.log(a.seconds() / b.seconds()) / Math.log(b.kilograms() / a.kilograms());
    }

    /** The pot life in seconds; not a number above {@link #largest()}. */
    double secondsAt(double kilograms) {
        Node first = nodes.get(0);
        if (massless()) {
            return first.seconds();
        }
        if (stated.isPresent()) {
            return first.seconds() * Math.pow(first.kilograms() / kilograms, stated.getAsDouble());
        }
        if (kilograms <= first.kilograms()) {
            return first.seconds();
        }
        if (kilograms > largest() * (1 + 1e-9)) {
            return Double.NaN;
        }
        if (nodes.size() == 1) {
            return first.seconds() * Math.pow(first.kilograms() / kilograms, ONE_MASS_EXPONENT);
        }
        int i = 1;
        while (i < nodes.size() - 1 && nodes.get(i).kilograms() < kilograms) {
            i++;
        }
        Node a = nodes.get(i - 1);
        return a.seconds() * Math.pow(a.kilograms() / kilograms, exponent(a, nodes.get(i)));
    }

    private record Node(double kilograms, double seconds, CureLaw law) {}
}
