package fayline.app.usecase.calc.hold;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.method.allowable.AllowableCalculator;
import fayline.method.allowable.AllowableResult;
import fayline.method.allowable.CouponTests;
import fayline.method.allowable.ToleranceFactor;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tolerance factors, and what tests of a few pieces allow. */
final class AllowableTopic {
    private static final double B_PROPORTION = 0.9;
    private static final double B_CONFIDENCE = 0.95;
    private static final String FACTOR = "n proportion confidence";
    private static final String PIECES = "strengths [atBondFace] [inAdherend] [proportion] [confidence]";

    private AllowableTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "allowable",
                "What tests of a few pieces allow: a bound that most of all pieces will bear, and tolerance factors.",
                terms(),
                List.of(
                        giving("strengths", "loads width overlap", AllowableTopic::strengths),
                        giving("mean", PIECES, k -> pieces(k).meanPa()),
                        giving("deviation", PIECES, k -> pieces(k).deviationPa()),
                        giving("allowed", PIECES, k -> value(k, pieces(k).allowedPa())),
                        giving("factor", FACTOR + " [sides]", AllowableTopic::factor),
                        giving("factor", PIECES, k -> value(k, pieces(k).factor())),
                        giving("factorNatrella", FACTOR, k -> approximate(k, 1)),
                        giving("factorHowe", FACTOR, k -> approximate(k, 2)),
                        giving(
                                "lowerHowe",
                                FACTOR + " mid spread",
                                k -> k.si("mid") - approximate(k, 2) * k.si("spread")),
                        giving(
                                "upperHowe",
                                FACTOR + " mid spread",
                                k -> k.si("mid") + approximate(k, 2) * k.si("spread")),
                        giving("lower", FACTOR + " mid spread [sides]", k -> k.si("mid") - factor(k) * k.si("spread")),
                        giving(
                                "upper",
                                FACTOR + " mid spread [sides]",
                                k -> k.si("mid") + factor(k) * k.si("spread"))));
    }

    private static List<Term> terms() {
        return List.of(
                Term.list("strengths", "MPa", "strength of each piece"),
                Term.list("loads", "N", "load at which each lap shear piece broke"),
                number("width", "mm", "width of the pieces"),
                number("overlap", "mm", "overlap of the pieces"),
                Term.count("atBondFace", "how many parted between adhesive and surface; none where it is not given"),
                Term.count("inAdherend", "how many broke in the adherend; none where it is not given"),
                number("proportion", "-", "of all pieces that bear more; 0.9 where it is not given"),
                number("confidence", "-", "confidence; 0.95 where it is not given"),
                Term.count("n", "how many pieces"),
                Term.count("sides", "1 or 2; 1 where it is not given"),
                number("mid", "-", "mean of a sample"),
                number("spread", "-", "standard deviation of a sample"),
                number("mean", "MPa", "mean strength"),
                number("deviation", "MPa", "standard deviation"),
                number("factor", "-", "standard deviations from the mean to the bound"),
                number("factorNatrella", "-", "the one-sided factor as handbooks approximate it"),
                number("factorHowe", "-", "the two-sided factor as handbooks approximate it"),
                number("allowed", "MPa", "the bound that most pieces will bear"),
                number("lower", "-", "lower bound of a sample given by mean and spread"),
                number("upper", "-", "upper bound of it"),
                number("lowerHowe", "-", "lower bound on both sides as handbooks approximate it"),
                number("upperHowe", "-", "upper bound likewise"));
    }

    private static Object strengths(Known k) {
        k.by("load / (width overlap), the mean over the bond", "[astm-d1002]");
        k.caution(
                "A lap shear piece gives the mean stress of an uneven one: it speaks for joints of the same adherends,"
                        + " thickness and overlap, not for the adhesive's own strength.");
        double area = k.si("width") * k.si("overlap");
        if (!(area > 0)) {
            throw new NotCoveredException("width and overlap must be positive");
        }
        return k.list("loads").stream().map(p -> p / area).toList();
    }

    private static AllowableResult pieces(Known k) {
        k.by("mean - k s, k from the noncentral t distribution", "[owen1963], [cmh17]");
        AllowableResult r = NotCoveredException.refusing(() -> AllowableCalculator.calculate(new CouponTests(
                k.list("strengths"),
                k.has("atBondFace") ? k.count("atBondFace") : 0,
                k.has("inAdherend") ? k.count("inAdherend") : 0,
                k.si("proportion", B_PROPORTION),
                k.si("confidence", B_CONFIDENCE))));
        r.findings().forEach(f -> k.caution(f.sentence()));
        return r;
    }

    private static Object value(Known k, OptionalDouble v) {
        return k.take(
                v.isPresent() ? Optional.of(v.getAsDouble()) : Optional.<Double>empty(),
                pieces(k).findings());
    }

    private static double factor(Known k) {
        boolean two = k.has("sides") && k.count("sides") == 2;
        k.by(
                two
                        ? "two-sided factor of the normal distribution, integrated"
                        : "noncentral t at the confidence over the root of n",
                two ? "[odeh-owen1980]" : "[owen1963]");
        return NotCoveredException.refusing(() -> two
                ? ToleranceFactor.twoSided(k.count("n"), k.si("proportion"), k.si("confidence"))
                : ToleranceFactor.oneSided(k.count("n"), k.si("proportion"), k.si("confidence")));
    }

    private static double approximate(Known k, int sides) {
        k.by("handbook approximation", sides == 1 ? "[natrella1963]" : "[howe1969]");
        return NotCoveredException.refusing(() -> sides == 1
                ? ToleranceFactor.oneSidedApproximate(k.count("n"), k.si("proportion"), k.si("confidence"))
                : ToleranceFactor.twoSidedApproximate(k.count("n"), k.si("proportion"), k.si("confidence")));
    }
}
