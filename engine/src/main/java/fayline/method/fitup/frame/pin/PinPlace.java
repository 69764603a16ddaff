package fayline.method.fitup.frame.pin;

import fayline.method.fitup.frame.FramePoint;

/**
 * Where a pin or its striker sits: on a rigid arm from a node.
 *
 * @param node counted from 0
 * @param arm from the node to the pin
 * @param ofPart whether it moves with the part; else with the structure. At a tied node the two differ only where clamps held
 *     the part off nominal
 */
public record PinPlace(int node, FramePoint arm, boolean ofPart) {}
