package fayline.app.usecase.fit;

import fayline.flow.project.design.Hand;
import java.util.ArrayList;
import java.util.List;

/**
 * A fit begun on the spot, everything as typed.
 *
 * @param id its id
 * @param name its name
 * @param hand left or right; none counts as left
 * @param gap nominal gap, such as {@code 3 mm}
 * @param gapTolerance allowed deviation either way
 * @param flush nominal flush
 * @param flushTolerance allowed deviation either way
 * @param stations the marked places, in order
 */
public record NewFit(
        String id,
        String name,
        Hand hand,
        String gap,
        String gapTolerance,
        String flush,
        String flushTolerance,
        List<Marked> stations) {
    /** Copies the list. */
    public NewFit {
        stations = List.copyOf(stations);
    }

    /**
     * A marked place.
     *
     * @param id its mark
     * @param where where it is, in words
     * @param at its place as {@code x y} in mm, seen from outside; empty where it was not measured
     * @param normal direction from part to neighbour as {@code x y}; empty where there is no place
     */
    public record Marked(String id, String where, String at, String normal) {}

    /**
     * Stations of which only the number is known, marked 1, 2, 3.
     *
     * @param number how many
     */
    public static List<Marked> numbered(int number) {
        List<Marked> all = new ArrayList<>();
        for (int i = 1; i <= number; i++) {
            all.add(new Marked(String.valueOf(i), "station " + i, "", ""));
        }
        return List.copyOf(all);
    }
}
