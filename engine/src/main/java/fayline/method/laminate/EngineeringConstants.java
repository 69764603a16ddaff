package fayline.method.laminate;

/**
 * What a laminate is to one who pulls or bends it, from the whole 6 by 6 compliance: it is free to stretch, bend and twist as it
 * likes. Moduli in bending are those of a plain sheet of the same thickness that bends alike.
 *
 * @param exPa in plane along x, Pa
 * @param eyPa in plane along y, Pa
 * @param gxyPa in plane in shear, Pa
 * @param nuXy contraction along y over stretch along x
 * @param nuYx contraction along x over stretch along y
 * @param flexXPa in bending along x, 12/(h^3 d11), Pa
 * @param flexYPa in bending along y, Pa
 * @param flexGxyPa in twisting, Pa
 * @param flexNuXy anticlastic ratio -d12/d11
 */
public record EngineeringConstants(
        double exPa,
        double eyPa,
        double gxyPa,
        double nuXy,
        double nuYx,
        double flexXPa,
        double flexYPa,
        double flexGxyPa,
        double flexNuXy) {}
