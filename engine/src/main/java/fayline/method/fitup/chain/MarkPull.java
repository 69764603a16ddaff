package fayline.method.fitup.chain;

import fayline.method.fitup.Move;

/**
 * What a wrongly found mark does to the bench that it helps to lay: the least-squares motion is linear in small errors.
 *
 * @param mark the mark
 * @param perMmX how the bench moves about the middle of the marks for one millimetre of error along x of the final frame
 * @param perMmY the same along y
 */
public record MarkPull(DatumMark mark, Move perMmX, Move perMmY) {}
