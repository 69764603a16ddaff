package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.result.fit.frame.SprungShape.BondPull;
import fayline.flow.result.fit.frame.SprungShape.Judged;
import fayline.flow.result.fit.frame.SprungShape.Strength;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The load of a bond, even over width and run, against its entered strength: strength over load less one, for peel where it is
 * pulled open and for shear, each alone. An assumed strength never passes.
 */
final class BondStrength {
    private BondStrength() {}

    static Strength of(Optional<FrameAdhesive> adhesive, List<BondPull> bonds) {
        if (adhesive.isEmpty()
                || (adhesive.get().peelStrengthMpa().isEmpty()
                        && adhesive.get().shearStrengthMpa().isEmpty())) {
            return new Strength(Judged.NOT_GIVEN, OptionalDouble.empty(), "");
        }
        FrameAdhesive a = adhesive.get();
        double least = Double.POSITIVE_INFINITY;
        String at = "";
        for (BondPull b : bonds) {
            double here =
                    Math.min(margin(a.peelStrengthMpa(), b.peelMpa()), margin(a.shearStrengthMpa(), b.shearMpa()));
            if (here < least) {
                least = here;
                at = b.place().id();
            }
        }
        Judged judged = least < 0
                ? Judged.ABOVE
                : a.peelStrengthMpa().isEmpty() || a.shearStrengthMpa().isEmpty()
                        ? Judged.PARTLY
                        : a.assumed() ? Judged.ASSUMED : Judged.WITHIN;
        return new Strength(judged, Double.isFinite(least) ? OptionalDouble.of(least) : OptionalDouble.empty(), at);
    }

    private static double margin(OptionalDouble strength, OptionalDouble load) {
        return strength.isEmpty() || !(load.orElse(0) > 0)
                ? Double.POSITIVE_INFINITY
                : strength.getAsDouble() / load.getAsDouble() - 1;
    }
}
