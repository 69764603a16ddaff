package fayline.flow.project.fit.frame;

import java.util.OptionalDouble;

/**
 * The adhesive between part and carrier.
 *
 * @param thicknessMm of the bond line; positive
 * @param widthMm of the bond line; positive
 * @param shearMpa its shear modulus
 * @param peelMpa its modulus square to the film, which cannot contract
 * @param opens the way in which it is pulled open; a shift
 * @param shearStrengthMpa what it may carry in shear, where that is entered
 * @param peelStrengthMpa what it may carry square to the film, where that is entered
 * @param origin where its figures are from
 * @param assumed whether its figures are assumed
 */
public record FrameAdhesive(
        double thicknessMm,
        double widthMm,
        double shearMpa,
        double peelMpa,
        FrameWay opens,
        OptionalDouble shearStrengthMpa,
        OptionalDouble peelStrengthMpa,
        String origin,
        boolean assumed) {}
