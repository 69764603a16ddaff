package fayline.method.laminate.optimum;

import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.strength.Criterion;
import java.util.List;

/**
 * What a stack must be and bear. A stiffness of 0 asks nothing.
 *
 * @param stretchXNPerM modulus along x times thickness, N/m
 * @param stretchYNPerM modulus along y times thickness, N/m
 * @param shearNPerM shear modulus times thickness, N/m
 * @param bendXNm stiffness in bending along x per width of a strip free to curve across, 1/d11, N m
 * @param bendYNm the same along y, N m
 * @param loads loads it must bear, each by itself
 * @param criterion when a ply fails
 * @param leastRatio least strength ratio under each load; positive
 */
public record Wanted(
        double stretchXNPerM,
        double stretchYNPerM,
        double shearNPerM,
        double bendXNm,
        double bendYNm,
        List<SectionLoad> loads,
        Criterion criterion,
        double leastRatio) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a stiffness is negative, the ratio not positive, or nothing is asked at all
     */
    public Wanted {
        loads = List.copyOf(loads);
        double asked = stretchXNPerM + stretchYNPerM + shearNPerM + bendXNm + bendYNm;
        boolean negative = stretchXNPerM < 0 || stretchYNPerM < 0 || shearNPerM < 0 || bendXNm < 0 || bendYNm < 0;
        if (negative || !Double.isFinite(asked) || !(leastRatio > 0)) {
            throw new IllegalArgumentException("stiffness and strength ratio asked: found a negative one or none");
        }
        if (asked == 0 && loads.isEmpty()) {
            throw new IllegalArgumentException("nothing is asked of the stack: a stiffness or a load is needed");
        }
    }

    /** Stiffness asked in plane: 0 and 1 along x and y, 2 in shear. */
    double stretch(int i) {
        return i == 0 ? stretchXNPerM : i == 1 ? stretchYNPerM : shearNPerM;
    }

    /** Stiffness asked in bending: 0 and 1 along x and y; nothing is asked of twisting. */
    double bend(int i) {
        return i == 0 ? bendXNm : i == 1 ? bendYNm : 0;
    }

    /** Whether the order of the plies cannot matter to anything asked. */
    boolean isInPlane() {
        return bendXNm == 0
                && bendYNm == 0
                && loads.stream().allMatch(l -> l.mxN() == 0 && l.myN() == 0 && l.mxyN() == 0);
    }
}
