package fayline.app.drawing.fit;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.outline.PartOutline;
import java.util.List;
import java.util.Optional;

/**
 * How a part is set and held, as it is drawn on its card.
 *
 * @param title what it shows, for those who cannot see it
 * @param side the side of the part: tells which way is aft
 * @param outline the part's edge; empty where it is not drawn
 * @param stations the stations whose places are known
 * @param holds places where it is held off its neighbour and clamped
 * @param move the move; empty where none can be told
 * @param pivot its pivot
 */
public record HoldPicture(
        String title,
        Side side,
        Optional<PartOutline> outline,
        List<Station> stations,
        List<Hold> holds,
        Optional<Move> move,
        Spot pivot) {
    /** Copies the lists. */
    public HoldPicture {
        stations = List.copyOf(stations);
        holds = List.copyOf(holds);
    }

    /**
     * A place where it is held.
     *
     * @param at where, and which way from the part
     * @param words what goes in, in the reader's units; empty where that is not known
     */
    public record Hold(Station at, String words) {}
}
