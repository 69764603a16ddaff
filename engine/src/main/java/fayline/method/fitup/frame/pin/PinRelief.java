package fayline.method.fitup.frame.pin;

/**
 * What changing the part at one clamp would do for a pin.
 *
 * @param clamp the clamp's name
 * @param changeMm change of the free part there, along the clamp's freedom, with which the pin lies as near its axis as this clamp
 *     can bring it
 * @param lateralMm how far off it then still is
 */
public record PinRelief(String clamp, double changeMm, double lateralMm) {}
