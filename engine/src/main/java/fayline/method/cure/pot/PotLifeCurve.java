package fayline.method.cure.pot;

import fayline.method.cure.CureState;
import fayline.method.cure.SheetPoint;
import java.util.List;
import java.util.Optional;

/**
 * Pot life against mass for one system, temperature and container: the bare numbers behind {@link PotLifeCalculator}, for
 * whoever looks for the largest batch.
 */
public final class PotLifeCurve {
    private final MassLaw law;
    private final double factor;

    private PotLifeCurve(MassLaw law, double factor) {
        this.law = law;
        this.factor = factor;
    }

    /**
     * The curve of a question; its mass does not count.
     *
     * @return empty where the data sheet gives no pot life
     */
    public static Optional<PotLifeCurve> of(PotLife question) {
        List<SheetPoint> all = question.sheet().points().stream()
                .filter(p -> p.state() == CureState.POT_LIFE && p.time().seconds() > 0)
                .toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<SheetPoint> points = MassLaw.ofShape(all, question.shape());
        MassLaw law =
                MassLaw.of(question.sheet(), points, question.temperature().kelvins(), question.exponent());
        return Optional.of(new PotLifeCurve(
                law, PotLifeCalculator.factor(question, points.get(0).shape())));
    }

    /**
     * Pot life in seconds; falls with the mass.
     *
     * @param kilograms mixed mass, above zero
     * @return not a number above {@link #largestKilograms()}
     */
    public double secondsAt(double kilograms) {
        return law.secondsAt(kilograms) * factor;
    }

    /** The largest mass with a claim; infinite where mass does not count or the exponent was stated. */
    public double largestKilograms() {
        return law.largest();
    }
}
