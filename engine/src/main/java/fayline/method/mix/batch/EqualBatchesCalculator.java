package fayline.method.mix.batch;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;

/**
 * Equal batches: N = ceil(M/m_max - 1e-9), each M/N. The small number guards against binary division: 1.05 kg in batches of
 * 0.15 kg are 7, though the quotient is 7.000000000000001.
 */
public final class EqualBatchesCalculator {
    private static final double BINARY_GUARD = 1e-9;
    private static final int MOST = 10_000;

    private EqualBatchesCalculator() {}

    /** Answers the question. */
    public static EqualBatchesResult calculate(EqualBatches question) {
        double total = question.total().kilograms();
        double largest = question.largest().kilograms();
        if (!(total >= 0 && largest > 0) || total / largest > MOST) {
            return new EqualBatchesResult(
                    0,
                    Optional.empty(),
                    List.of(new Finding(
                            Severity.STOP,
                            "batches",
                            "A mix that is not negative and a largest batch above zero are needed, at most 10000 batches:"
                                    + " not covered.",
                            "mass balance")));
        }
        int n = (int) Math.ceil(total / largest - BINARY_GUARD);
        return new EqualBatchesResult(n, n == 0 ? Optional.empty() : Optional.of(new Mass(total / n)), List.of());
    }
}
