package fayline.method.fitup.space;

import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;

/**
 * A move of a flat part out of its plane about a pivot: flush f goes to f + dz + rx · r_y − ry · r_x.
 *
 * @param dzMm outboard
 * @param rxRad about x by the right-hand rule
 * @param ryRad about y by the right-hand rule
 */
public record FlushMove(double dzMm, double rxRad, double ryRad) {
    /** The same as a move in space. */
    public SpaceMove inSpace() {
        return new SpaceMove(new Vector(0, 0, dzMm), new Vector(rxRad, ryRad, 0));
    }
}
