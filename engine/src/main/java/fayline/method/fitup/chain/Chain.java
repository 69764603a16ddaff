package fayline.method.fitup.chain;

import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.LaterDoubt;
import fayline.method.fitup.scheme.Missing;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A part that reaches its place through several bonds.
 *
 * @param links from the innermost part outward: the carrier of each is the part of the next
 * @param stations the gaps watched; at least one
 * @param commonReadingMm standard uncertainty that all readings share; empty where not given
 * @param later states to come, whose doubt adds to every gap
 * @param besides causes that act on all gaps at once whatever holds the parts, as a thermometer does
 * @param missing what the caller already knows that nobody has given; not empty: no chance is told
 * @param assumed what may be assumed where an uncertainty is not given
 * @param seed of the points of the joint chance
 */
public record Chain(
        List<Link> links,
        List<ChainStation> stations,
        OptionalDouble commonReadingMm,
        List<LaterDoubt> later,
        List<GapSource> besides,
        List<Missing> missing,
        Set<Assumption> assumed,
        long seed) {
    /**
     * Copies the collections.
     *
     * @throws IllegalArgumentException if the links do not follow each other, or a station is on no part of the chain or
     *     against something further in
     */
    public Chain {
        links = List.copyOf(links);
        stations = List.copyOf(stations);
        later = List.copyOf(later);
        besides = List.copyOf(besides);
        missing = List.copyOf(missing);
        assumed = Set.copyOf(assumed);
        if (links.isEmpty() || stations.isEmpty()) {
            throw new IllegalArgumentException(
                    "a chain has links and stations, not " + links.size() + " and " + stations.size());
        }
        Set<String> parts = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (int k = 0; k < links.size(); k++) {
            Link l = links.get(k);
            if (k + 1 < links.size() && !l.carrier().equals(links.get(k + 1).part())) {
                throw new IllegalArgumentException("link " + l.name() + " ends on " + l.carrier() + ", the next bonds "
                        + links.get(k + 1).part());
            }
            if (!names.add(l.name())) {
                throw new IllegalArgumentException("two links are called " + l.name());
            }
            if (!parts.add(l.part())) {
                throw new IllegalArgumentException(l.part() + " is bonded twice");
            }
        }
        for (ChainStation s : stations) {
            if (first(links, s) >= last(links, s)) {
                throw new IllegalArgumentException(
                        "station " + s.id() + " lies between " + s.on() + " and " + s.against() + ": no link between");
            }
        }
    }

    /** A chain with no states to come. */
    public static Chain of(
            List<Link> links,
            List<ChainStation> stations,
            OptionalDouble commonReadingMm,
            Set<Assumption> assumed,
            long seed) {
        return new Chain(links, stations, commonReadingMm, List.of(), List.of(), List.of(), assumed, seed);
    }

    /** The same chain with other gaps, in order. */
    public Chain withGaps(List<Double> gapsMm) {
        List<ChainStation> other = IntStream.range(0, stations.size())
                .mapToObj(i -> stations.get(i).withGap(gapsMm.get(i)))
                .toList();
        return new Chain(links, other, commonReadingMm, later, besides, missing, assumed, seed);
    }

    /** Whether a link moves a station's gap: it lies between the two sides. */
    public boolean acts(int link, ChainStation station) {
        return link >= first(links, station) && link < last(links, station);
    }

    private static int first(List<Link> links, ChainStation s) {
        for (int k = 0; k < links.size(); k++) {
            if (links.get(k).part().equals(s.on())) {
                return k;
            }
        }
        throw new IllegalArgumentException("station " + s.id() + " is on " + s.on() + ", which no link bonds");
    }

    private static int last(List<Link> links, ChainStation s) {
        for (int k = 0; k < links.size(); k++) {
            if (links.get(k).part().equals(s.against())) {
                return k;
            }
        }
        return links.size();
    }
}
