package fayline.app.usecase.fit;

import fayline.flow.project.design.Hand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
 * @param against ids of the neighbours, the first one first; none where the shop has no parts yet
 * @param edge the part's edge, where it is drawn
 * @param stations the marked places, in order; empty where they are to be spread along the edge
 * @param spread how many stations to spread evenly along the edge; 0 for none
 * @param gauge what gaps are read with
 */
public record NewFit(
        String id,
        String name,
        Hand hand,
        String gap,
        String gapTolerance,
        String flush,
        String flushTolerance,
        List<String> against,
        Optional<NewEdge> edge,
        List<Marked> stations,
        int spread,
        Gauge gauge) {
    /** Copies the lists. */
    public NewFit {
        against = List.copyOf(against);
        stations = List.copyOf(stations);
    }

    /** A fit whose stations are all typed, with no edge, no neighbour and no gauge named. */
    public NewFit(
            String id,
            String name,
            Hand hand,
            String gap,
            String gapTolerance,
            String flush,
            String flushTolerance,
            List<Marked> stations) {
        this(
                id,
                name,
                hand,
                gap,
                gapTolerance,
                flush,
                flushTolerance,
                List.of(),
                Optional.empty(),
                stations,
                0,
                Gauge.NONE);
    }

    /**
     * A marked place.
     *
     * @param id its mark
     * @param where where it is, in words
     * @param at its place as {@code x y} in mm, seen from outside; empty where it was not measured
     * @param normal direction from part to neighbour as {@code x y}; empty where there is no place, or where it follows from the
     *     edge
     * @param out how far outboard of the plane a curved part lies here, with its unit; empty for a flat one
     * @param lean how far its surface falls away inboard towards the edge, with its unit; empty for a flat one
     */
    public record Marked(String id, String where, String at, String normal, String out, String lean) {
        /** A station of a flat part. */
        public Marked(String id, String where, String at, String normal) {
            this(id, where, at, normal, "", "");
        }
    }

    /**
     * What gaps are read with.
     *
     * @param name what it is; empty where it is not said
     * @param deviation standard uncertainty of one reading as typed; empty where it is not known
     * @param shared standard uncertainty that all readings of one hand share; empty where it is not known
     */
    public record Gauge(String name, String deviation, String shared) {
        /** Nothing said. */
        public static final Gauge NONE = new Gauge("", "", "");
    }

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
