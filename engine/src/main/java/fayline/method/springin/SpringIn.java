package fayline.method.springin;

/**
 * How far a corner closes.
 *
 * @param thermalDeg growth of the arc angle by cooling, degrees
 * @param cureDeg growth by the shrinkage of cure, degrees
 * @param totalDeg both: how far the included angle closes, degrees
 * @param toolIncludedDeg the included angle of a mould whose part has the wanted one, first order, degrees
 */
public record SpringIn(double thermalDeg, double cureDeg, double totalDeg, double toolIncludedDeg) {}
