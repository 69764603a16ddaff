/**
 * Pictures of a fit: the part's edge to scale, the gap beside it drawn many times as wide as it is, the tolerance behind it,
 * and the readings as pins. Start at {@link fayline.app.drawing.fit.GapDrawing}. Frame of what comes in: the plane of the part
 * seen from outside, in mm, y up, x aft on a left part and forward on a right one; normals from part to neighbour. What does
 * not belong here: how gaps change, and what may be done about them.
 */
@NullMarked
package fayline.app.drawing.fit;

import org.jspecify.annotations.NullMarked;
