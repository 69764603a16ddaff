package fayline.app.usecase.calc.laminate;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.method.springin.Corner;
import fayline.method.springin.SpringIn;
import fayline.method.springin.SpringInCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How far a corner closes off its mould. */
final class SpringInTopic {
    private SpringInTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "springin",
                "How far a moulded corner closes when it comes off its mould, and the angle its mould needs.",
                List.of(
                        number("arc", "deg", "how far the corner turns: 180 less the included angle"),
                        number("alphaInPlane", "1/K", "expansion along the arc"),
                        number("alphaThrough", "1/K", "expansion through the thickness"),
                        number("cure", "degC", "temperature at which the resin set"),
                        number("room", "degC", "temperature at which the angle is asked"),
                        number("shrinkInPlane", "-", "strain of cure along the arc, negative; 0 where it is not given"),
                        number("shrinkThrough", "-", "strain of cure through the thickness, negative"),
                        number("thermal", "deg", "growth of the arc angle by cooling"),
                        number("byCure", "deg", "growth of the arc angle by cure"),
                        number("springIn", "deg", "how far the included angle closes"),
                        number("toolIncluded", "deg", "included angle the mould needs")),
                relations());
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        figure(r, "thermal", SpringIn::thermalDeg);
        figure(r, "byCure", SpringIn::cureDeg);
        figure(r, "springIn", SpringIn::totalDeg);
        figure(r, "toolIncluded", SpringIn::toolIncludedDeg);
        return r;
    }

    private static void figure(List<Relation> r, String name, ToDoubleFunction<SpringIn> degrees) {
        r.add(giving(
                name,
                "arc alphaInPlane alphaThrough cure room [shrinkInPlane] [shrinkThrough]",
                k -> Math.toRadians(degrees.applyAsDouble(reckoned(k)))));
    }

    private static SpringIn reckoned(Known k) {
        k.by("theta (aI - aT) dT/(1 + aT dT) + theta (sI - sT)/(1 + sT)", "[radford-rennick2000]");
        k.caution(
                "A part held along its bend closes 1.4 to 6.3 percent more; the mould may stretch the part as much again."
                        + " Measure the first part before a second mould is cut.");
        try {
            return SpringInCalculator.calculate(new Corner(
                    Math.toDegrees(k.si("arc")),
                    k.si("alphaInPlane"),
                    k.si("alphaThrough"),
                    k.si("room") - k.si("cure"),
                    k.si("shrinkInPlane", 0),
                    k.si("shrinkThrough", 0)));
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }
}
