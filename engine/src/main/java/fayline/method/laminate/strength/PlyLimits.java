package fayline.method.laminate.strength;

import fayline.method.laminate.Laminate;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.SectionStrain;
import java.util.List;
import java.util.Optional;

/** Finds the failure that comes first in each ply of a laminate whose modes are known. */
final class PlyLimits {
    private final Laminate laminate;
    private final SectionStrain under;
    private final SectionStrain free;
    private final double changeK;

    PlyLimits(Laminate laminate, SectionLoad load) {
        this.laminate = laminate;
        this.changeK = load.temperatureChangeK();
        this.under = laminate.strain(load);
        this.free = changeK == 0
                ? new SectionStrain(0, 0, 0, 0, 0, 0)
                : laminate.expansionPerK().times(changeK);
    }

    private static final PlyStress NOTHING = new PlyStress(0, 0, 0);

    Optional<PlyFailure> ofPly(int ply, List<FailureMode> modes, PlyStrength strength) {
        double least = Double.POSITIVE_INFINITY;
        int where = 0;
        FailureMode how = modes.get(0);
        for (int face = 0; face < 2; face++) {
            PlyStress m = laminate.stress(ply, face, under);
            PlyStress r = changeK == 0 ? NOTHING : laminate.residual(ply, face, free, changeK);
            for (int i = 0; i < modes.size(); i++) {
                double ratio = modes.get(i).ratio(m, r);
                if (ratio < least) {
                    least = ratio;
                    where = face;
                    how = modes.get(i);
                }
            }
        }
        return least == Double.POSITIVE_INFINITY
                ? Optional.empty()
                : Optional.of(new PlyFailure(ply, where, least, how.name(), isFibre(ply, where, how, strength, least)));
    }

    private boolean isFibre(int ply, int face, FailureMode mode, PlyStrength s, double ratio) {
        if (mode.kind() != FailureMode.Kind.BY_SHARE) {
            return mode.kind() == FailureMode.Kind.FIBRE;
        }
        PlyStress at = laminate.stress(ply, face, under).times(ratio).plus(laminate.residual(ply, face, free, changeK));
        double along = at.s1Pa() / (at.s1Pa() >= 0 ? s.xtPa() : s.xcPa());
        double across = Math.hypot(at.s2Pa() / (at.s2Pa() >= 0 ? s.ytPa() : s.ycPa()), at.t12Pa() / s.sPa());
        return Math.abs(along) > across;
    }
}
