package fayline.method.fitup.frame.bond;

import fayline.method.fitup.frame.Axis;

/**
 * A gap between part and structure beside the bond, which the released shape may close.
 *
 * @param id its name
 * @param partNode node of the part
 * @param structureNode node of the structure
 * @param opening the way the gap opens when the part moves along it
 * @param gapMm the gap in the clamped state
 */
public record Clearance(String id, int partNode, int structureNode, Axis opening, double gapMm) {}
