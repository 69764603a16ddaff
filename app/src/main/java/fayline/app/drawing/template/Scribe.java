package fayline.app.drawing.template;

import fayline.method.fitup.Spot;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.List;

/**
 * One cut as it is scribed.
 *
 * @param edge the edge it lies on
 * @param side what is cut: the part, inwards of its edge; or the neighbour, outwards of the edge that both follow
 * @param finish points of the line to finish to, in mm
 * @param first points of the line to cut to at first, with the allowance left on; in mm
 */
public record Scribe(String edge, CutSide side, List<Spot> finish, List<Spot> first) {
    /** Copies the lists. */
    public Scribe {
        finish = List.copyOf(finish);
        first = List.copyOf(first);
    }
}
