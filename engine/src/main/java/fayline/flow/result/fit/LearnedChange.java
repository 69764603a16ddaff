package fayline.flow.result.fit;

import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;

/**
 * What coming into a state did to a part elsewhere.
 *
 * @param state the state that was come into
 * @param move how the part moved, in the frame of the part that learns
 * @param pivot the pivot of that move
 * @param restMm what no rigid move explains: root of the mean square
 * @param from the fit that taught it
 */
public record LearnedChange(String state, SpaceMove move, Vector pivot, double restMm, String from) {}
