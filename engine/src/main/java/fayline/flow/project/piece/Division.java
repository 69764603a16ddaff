package fayline.flow.project.piece;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceRange;
import fayline.flow.project.design.PieceSets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which pieces of each part that stands for like pieces are made together. A set's id says its pieces: {@code
 * bulkheads-7-12} is the set of the part {@code bulkheads} with the pieces 7 to 12. So what is recorded of a set says itself
 * which pieces were in it, and a set that has begun stays as it is.
 *
 * @param sets the sets of each leading part, by its id, in the order of their pieces
 */
public record Division(Map<String, List<Range>> sets) {
    /** Divisions of one definition that are looked at, at most. */
    public static final int MOST = 12;

    private static final Pattern PIECES = Pattern.compile("-([1-9][0-9]{0,2})-([1-9][0-9]{0,2})");

    /** Copies the map. */
    public Division {
        Map<String, List<Range>> copy = new LinkedHashMap<>();
        sets.forEach((id, of) -> copy.put(id, List.copyOf(of)));
        sets = Collections.unmodifiableMap(copy);
    }

    /**
     * Pieces that are made together.
     *
     * @param from number of the first, from 1
     * @param to number of the last, included
     */
    public record Range(int from, int to) {
        int size() {
            return to - from + 1;
        }

        boolean meets(Range other) {
            return from <= other.to && other.from <= to;
        }
    }

    /**
     * All divisions of a definition that keep what has begun, the usual one leading: fewest sets, as even as can be.
     *
     * @param whole a definition with its parts undivided
     * @param begun ids of what is made, as recorded; those that are no sets are left out of account
     * @param limits the most pieces of a set by the leading part's id, where they are fewer than its own
     * @return at least one, at most {@value #MOST}
     */
    public static List<Division> all(Definition whole, Collection<String> begun, Map<String, Integer> limits) {
        List<Division> all = List.of(new Division(Map.of()));
        for (Part part : leading(whole)) {
            List<Range> fixed = fixed(whole, part, begun);
            List<Division> more = new ArrayList<>();
            for (List<Range> way : ways(part, fixed, limits.getOrDefault(part.id(), Integer.MAX_VALUE))) {
                all.forEach(d -> more.add(d.and(part.id(), way)));
            }
            all = more.stream().limit(MOST).toList();
        }
        return all;
    }

    /**
     * One division of a definition.
     *
     * @param whole a definition with its parts undivided
     * @param begun ids of what is made, as recorded; they stay
     * @param wanted ids of sets that are wanted beside them, as far as they fit; the rest is as usual
     */
    public static Division of(Definition whole, Collection<String> begun, Collection<String> wanted) {
        Division division = new Division(Map.of());
        for (Part part : leading(whole)) {
            List<Range> fixed = new ArrayList<>(fixed(whole, part, begun));
            for (Range w : fixed(whole, part, wanted)) {
                if (fixed.stream().noneMatch(w::meets)) {
                    fixed.add(w);
                }
            }
            fixed.sort(Comparator.comparingInt(Range::from));
            division =
                    division.and(part.id(), ways(part, fixed, Integer.MAX_VALUE).get(0));
        }
        return division;
    }

    /** The parts that state pieces of their own. */
    public static List<Part> leading(Definition whole) {
        return whole.parts().stream()
                .filter(p -> p.sets().filter(s -> s.as().isEmpty()).isPresent())
                .toList();
    }

    /** The id of the part whose sets a part has. */
    public static String leader(Part part) {
        return part.sets().flatMap(PieceSets::as).orElse(part.id());
    }

    /**
     * The part whose set an id is, however the definition's pieces are divided now.
     *
     * @param definition a definition, divided or not
     * @param id an id as written in a record
     */
    public static Optional<Part> partOf(Definition definition, String id) {
        return definition.parts().stream()
                .map(p -> p.pieces().map(PieceRange::of).orElse(p))
                .filter(p -> p.sets().isPresent() && range(p.id(), id).isPresent())
                .findFirst();
    }

    private Division and(String part, List<Range> of) {
        Map<String, List<Range>> more = new LinkedHashMap<>(sets);
        more.put(part, of);
        return new Division(more);
    }

    /** The sets of a part, or of one that follows it, among ids; none that meet. */
    private static List<Range> fixed(Definition whole, Part part, Collection<String> ids) {
        int pieces = part.sets().map(PieceSets::pieces).orElse(0);
        List<Range> fixed = new ArrayList<>();
        for (Part of : whole.parts()) {
            if (of.sets().isPresent() && leader(of).equals(part.id())) {
                ids.stream()
                        .sorted()
                        .flatMap(id -> range(of.id(), id).stream())
                        .filter(r -> r.from() >= 1 && r.from() <= r.to() && r.to() <= pieces)
                        .filter(r -> fixed.stream().noneMatch(r::meets))
                        .forEach(fixed::add);
            }
        }
        fixed.sort(Comparator.comparingInt(Range::from));
        return fixed;
    }

    /**
     * Whether an id is one of a set of something for each piece.
     *
     * @param of id of the part or of the mould
     * @param id the id
     */
    public static boolean isSet(String of, String id) {
        return range(of, id).isPresent();
    }

    /** The pieces that an id of a set of a part says. */
    static Optional<Range> range(String part, String id) {
        Matcher m = PIECES.matcher(id.startsWith(part) ? id.substring(part.length()) : "");
        if (!m.matches()) {
            return Optional.empty();
        }
        return Optional.of(new Range(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))));
    }

    /** The id of a set of a part. */
    static String id(String part, Range r) {
        return part + "-" + r.from() + "-" + r.to();
    }

    private static List<List<Range>> ways(Part part, List<Range> fixed, int limit) {
        PieceSets asks = part.sets().orElseThrow();
        int most = Math.max(1, Math.min(asks.most(), limit));
        int least = Math.min(asks.least(), most);
        List<List<Range>> ways = new ArrayList<>(List.of(List.of()));
        int next = 1;
        List<Range> stops = new ArrayList<>(fixed);
        stops.add(new Range(asks.pieces() + 1, asks.pieces() + 1));
        for (Range stop : stops) {
            if (stop.from() > next) {
                List<List<Range>> more = new ArrayList<>();
                for (List<Integer> sizes : SetSizes.of(stop.from() - next, least, most)) {
                    for (List<Range> way : ways) {
                        more.add(with(way, next, sizes));
                    }
                }
                ways = more;
            }
            if (stop.to() <= asks.pieces()) {
                ways.replaceAll(way -> with(way, stop.from(), List.of(stop.size())));
            }
            next = stop.to() + 1;
        }
        return ways.stream()
                .sorted(Comparator.comparingInt(List::size))
                .limit(MOST)
                .toList();
    }

    private static List<Range> with(List<Range> way, int from, List<Integer> sizes) {
        List<Range> more = new ArrayList<>(way);
        int next = from;
        for (int size : sizes) {
            more.add(new Range(next, next + size - 1));
            next += size;
        }
        return List.copyOf(more);
    }
}
