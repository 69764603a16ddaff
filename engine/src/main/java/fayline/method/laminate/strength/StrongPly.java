package fayline.method.laminate.strength;

import fayline.method.laminate.Ply;
import java.util.Optional;

/**
 * A layer with what it bears.
 *
 * @param ply the layer
 * @param strength what it bears; empty for a layer that is not asked, such as a core judged elsewhere
 * @param limits strains it bears; derived from the strengths where they are not given
 */
public record StrongPly(Ply ply, Optional<PlyStrength> strength, Optional<StrainLimits> limits) {
    /** A layer with strengths. */
    public static StrongPly of(Ply ply, PlyStrength strength) {
        return new StrongPly(ply, Optional.of(strength), Optional.empty());
    }
}
