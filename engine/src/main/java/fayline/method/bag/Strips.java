package fayline.method.bag;

import fayline.basis.units.Length;

/**
 * The question how many strips of a roll cover a rectangle.
 *
 * @param neededWidth side across the strips
 * @param length side along the strips
 * @param rollWidth width of the roll
 * @param lap overlap of neighbouring strips
 */
public record Strips(Length neededWidth, Length length, Length rollWidth, Length lap) {}
