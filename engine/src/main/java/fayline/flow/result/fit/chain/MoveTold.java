package fayline.flow.result.fit.chain;

import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Optional;

/**
 * One thing that moves in a correction.
 *
 * @param name the link or the neighbour
 * @param neighbour whether it is a neighbour
 * @param move its move in the last fit's frame
 * @param pivot about which that is told
 * @param aboutMiddle whether the pivot is the middle of the stations
 * @param bench the same on a bench whose axes lie otherwise; empty where there is none
 * @param gaps what comes out at each station that this move changes
 */
public record MoveTold(
        String name,
        boolean neighbour,
        Move move,
        Spot pivot,
        boolean aboutMiddle,
        Optional<OnBench> bench,
        List<Reached> gaps) {
    /** Copies the list. */
    public MoveTold {
        gaps = List.copyOf(gaps);
    }

    /**
     * A move in a bench's own axes.
     *
     * @param move the move
     * @param pivot the same pivot, on the bench
     */
    public record OnBench(Move move, Spot pivot) {}

    /**
     * A gap with the whole correction.
     *
     * @param station the station
     * @param gapMm the gap
     * @param byMm what this move alone changes of it; negative closes
     */
    public record Reached(String station, double gapMm, double byMm) {}
}
