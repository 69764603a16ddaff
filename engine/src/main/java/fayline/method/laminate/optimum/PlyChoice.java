package fayline.method.laminate.optimum;

import fayline.method.laminate.strength.StrongPly;

/**
 * A ply that may be used, in one direction.
 *
 * @param name what it is called
 * @param ply material, thickness, direction and strengths
 * @param massKgPerM2 what it weighs with its resin, kg/m2; positive
 * @param costPerM2 what it costs, in any currency; not negative
 */
public record PlyChoice(String name, StrongPly ply, double massKgPerM2, double costPerM2) {
    /**
     * Refuses what no ply can be.
     *
     * @throws IllegalArgumentException if the mass is not positive or the cost negative
     */
    public PlyChoice {
        if (!(massKgPerM2 > 0) || !Double.isFinite(massKgPerM2) || !(costPerM2 >= 0)) {
            throw new IllegalArgumentException(name + ": found " + massKgPerM2 + " kg/m2 at " + costPerM2
                    + ", expected a mass above 0 and a cost not below");
        }
    }
}
