package fayline.method.asmade;

/**
 * What a piece is made of.
 *
 * @param fibreVolume fibre of the volume
 * @param resinVolume resin of the volume
 * @param voids the rest; slightly negative where a density is slightly wrong
 */
public record BurnOffResult(double fibreVolume, double resinVolume, double voids) {}
