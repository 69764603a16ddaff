package fayline.method.allowable;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A lower bound from few pieces: mean less factor times standard deviation, normally spread ([cmh17], vol. 1, ch. 8). No value
 * under five pieces; from 5 to 17 with a caution, since handbooks ask at least 18 for a B value. Where pieces parted at the
 * surface the bond was not prepared well enough and there is no value at all.
 */
public final class AllowableCalculator {
    private static final int HANDBOOK = 18;

    private AllowableCalculator() {}

    /** Answers the question. */
    public static AllowableResult calculate(CouponTests t) {
        int n = t.strengthsPa().size();
        if (n < 2) {
            throw new IllegalArgumentException("a spread needs at least 2 pieces, found " + n);
        }
        double mean = t.strengthsPa().stream().mapToDouble(s -> s).sum() / n;
        double squares = t.strengthsPa().stream()
                .mapToDouble(s -> (s - mean) * (s - mean))
                .sum();
        double deviation = Math.sqrt(squares / (n - 1));
        if (n < CouponTests.LEAST) {
            return new AllowableResult(
                    mean,
                    deviation,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(stop(String.format(
                            Locale.ROOT,
                            "%d pieces are too few for a value that most pieces will bear: test at least %d.",
                            n,
                            CouponTests.LEAST))));
        }
        double factor = ToleranceFactor.oneSided(n, t.proportion(), t.confidence());
        double allowed = mean - factor * deviation;
        List<Finding> findings = findings(t, n, allowed);
        boolean none = findings.stream().anyMatch(f -> f.severity() == Severity.STOP);
        return new AllowableResult(
                mean,
                deviation,
                OptionalDouble.of(factor),
                none ? OptionalDouble.empty() : OptionalDouble.of(allowed),
                findings);
    }

    private static List<Finding> findings(CouponTests t, int n, double allowed) {
        List<Finding> all = new ArrayList<>();
        if (t.atBondFace() > 0) {
            all.add(stop(String.format(
                    Locale.ROOT,
                    "%d of %d pieces parted between adhesive and surface: that tells of the surface, not of the adhesive, and"
                            + " gives no value. Prepare the surface anew and test again.",
                    t.atBondFace(),
                    n)));
        }
        if (allowed <= 0) {
            all.add(
                    stop(
                            "The spread is so wide that the bound lies below nothing: test more pieces and ask why they differ."));
        }
        if (n < HANDBOOK) {
            all.add(caution(String.format(
                    Locale.ROOT,
                    "From %d pieces only; handbooks ask for at least %d, of several batches. With so few nobody can see whether"
                            + " they spread as the method presumes.",
                    n,
                    HANDBOOK)));
        }
        if (t.inAdherend() > 0) {
            all.add(caution(String.format(
                    Locale.ROOT,
                    "%d of %d pieces broke in the adherend: the bond bore more than that.",
                    t.inAdherend(),
                    n)));
        }
        return all;
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "pieces", sentence, "cmh17");
    }

    private static Finding caution(String sentence) {
        return new Finding(Severity.CAUTION, "pieces", sentence, "cmh17");
    }
}
