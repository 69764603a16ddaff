package fayline.app.usecase.traveller;

import fayline.basis.units.Mass;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.stock.ResinSystem;
import fayline.method.mix.MixRatio;
import fayline.method.mix.MixRatioCalculator;
import fayline.method.mix.MixRatioResult;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a cup was weighed right, and what mends it while it is wet.
 *
 * @param inTolerance whether the hardener is within the system's tolerance
 * @param deviation hardener against the nominal, as a fraction; negative where there is too little
 * @param hardenerToAdd hardener that mends it; nought where there is enough
 * @param resinToAdd resin that mends it; nought where there is enough
 * @param sentence what is to be said
 */
public record MixVerdict(boolean inTolerance, double deviation, Mass hardenerToAdd, Mass resinToAdd, String sentence) {
    /** A mass above nought as typed. */
    public static Optional<Mass> mass(String typed) {
        try {
            Mass mass = QuantityParser.parse(typed, QuantityKind.MASS).value();
            return mass.kilograms() > 0 ? Optional.of(mass) : Optional.empty();
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }

    /** The verdict on two scale readings as typed; empty where one of them is none. */
    public static Optional<MixVerdict> of(ResinSystem system, String resin, String hardener) {
        Optional<Mass> a = mass(resin);
        Optional<Mass> b = mass(hardener);
        if (a.isEmpty() || b.isEmpty()) {
            return Optional.empty();
        }
        MixRatioResult r = MixRatioCalculator.calculate(MixRatio.weighed(
                system.partsResin(), system.partsHardener(), system.ratioTolerance(), a.get(), b.get()));
        return r.inTolerance()
                .map(within -> new MixVerdict(
                        within,
                        r.deviation().orElseThrow().ratio(),
                        r.hardenerToAdd().orElseThrow(),
                        r.resinToAdd().orElseThrow(),
                        within
                                ? String.format(
                                        Locale.ROOT,
                                        "ratio in tolerance, hardener %+.1f %%",
                                        r.deviation().orElseThrow().percent())
                                : r.findings().stream()
                                        .map(f -> f.sentence())
                                        .findFirst()
                                        .orElse("")));
    }
}
