package fayline.method.joint;

import fayline.basis.numeric.RootFinder;
import java.util.OptionalDouble;

/**
 * What a double lap of elastic-plastic adhesive bears, whatever its overlap, heat included ([hart-smith1973], derived anew from
 * the energy of the adhesive): at the end where the outer adherends stop
 * (ao - ai) dT Si + sqrt(2 t tp (ge/2 + gp) 2 Si (1 + Si / 2 So)), at the other end
 * (ai - ao) dT 2 So + sqrt(2 t tp (ge/2 + gp) 4 So (1 + 2 So / Si)); S = E t. P is a pull per width that both bonds carry.
 *
 * @param elasticStrain shear strain at which the adhesive begins to flow
 * @param lambdaPerM how fast elastic stress dies away
 * @param outerStopsNPerM load that the end bears where the outer adherends stop
 * @param innerStopsNPerM load that the end bears where the inner one stops
 */
public record DoubleLapStrength(
        double elasticStrain, double lambdaPerM, double outerStopsNPerM, double innerStopsNPerM) {
    private static final double ACCURACY = 1e-12;
    /** Share of the strength that an overlap is made for: ultimate over limit load. */
    private static final double LIMIT = 1.5;

    private static final double TROUGH = 6;

    static DoubleLapStrength of(Adherend inner, Adherend outer, Adhesive bond, double heatK) {
        double flow = bond.yieldPa().orElseThrow();
        double elastic = flow / bond.shearPa();
        double so = outer.stretchNPerM();
        double si = inner.stretchNPerM();
        double energy = 2
                * bond.thicknessM()
                * flow
                * (elastic / 2 + bond.plasticStrain().orElse(0));
        double grows = (outer.alphaPerK() - inner.alphaPerK()) * heatK;
        return new DoubleLapStrength(
                elastic,
                Math.sqrt(bond.shearPa() / bond.thicknessM() * (1 / so + 2 / si)),
                grows * si + Math.sqrt(energy * 2 * si * (1 + si / (2 * so))),
                -grows * 2 * so + Math.sqrt(energy * 4 * so * (1 + 2 * so / si)));
    }

    /** The load of the end that gives way first, in N/m. */
    public double potentialNPerM() {
        return Math.min(outerStopsNPerM, innerStopsNPerM);
    }

    /** The overlap that carries the strength over 1.5 plastically and leaves a trough of 6/lambda between, in metres. */
    public double adequateOverlapM(double flowPa) {
        return potentialNPerM() / LIMIT / (2 * flowPa) + TROUGH / lambdaPerM;
    }

    /**
     * What a balanced joint without heat bears at an overlap: plastic at both ends, elastic between.
     *
     * @param overlapM overlap; positive
     * @param bond the adhesive
     */
    AtOverlap at(double overlapM, Adhesive bond) {
        double flow = bond.yieldPa().orElseThrow();
        double most = bond.plasticStrain().orElse(0);
        double half = overlapM / 2;
        OptionalDouble plastic = RootFinder.bracketed(
                l -> elasticStrain
                                * (lambdaPerM * l * Math.tanh(lambdaPerM * (half - l))
                                        + Math.pow(lambdaPerM * l, 2) / 2)
                        - most,
                0,
                half,
                ACCURACY);
        double l = plastic.orElse(half);
        return new AtOverlap(2 * flow * (2 * l + 2 / lambdaPerM * Math.tanh(lambdaPerM * (half - l))), l);
    }

    /**
     * A joint of some overlap at its strength.
     *
     * @param loadNPerM the load
     * @param plasticM length at each end that flows
     */
    public record AtOverlap(double loadNPerM, double plasticM) {}
}
