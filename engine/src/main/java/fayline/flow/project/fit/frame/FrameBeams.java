package fayline.flow.project.fit.frame;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The frame and what carries it as beams between places: the part is pulled to its places by clamps, bonded and let go. A place at
 * which both have beams is bonded.
 *
 * @param origin who says so, and from what
 * @param creeps whether the part is of a material that gives with time under load, as acrylic does
 * @param mismatchIn the state whose readings tell how far the part stands off; the one read last before the bond where empty
 * @param places places, in order
 * @param sections what the beams are made of
 * @param part the beams of the part
 * @param carrier the beams of what it is bonded to
 * @param rests what holds the part while it is clamped
 * @param held what holds part and carrier afterwards
 * @param clamps places where the part is pulled or pushed to its place
 * @param adhesive the adhesive; places are tied hard where empty
 * @param fittings latch pins and hinge points
 */
public record FrameBeams(
        String origin,
        boolean creeps,
        String mismatchIn,
        List<FramePlace> places,
        List<FrameSection> sections,
        List<FrameRun> part,
        List<FrameRun> carrier,
        List<FrameHold> rests,
        List<FrameHold> held,
        List<FrameClamp> clamps,
        Optional<FrameAdhesive> adhesive,
        List<FrameFitting> fittings) {
    /** Copies the lists. */
    public FrameBeams {
        places = List.copyOf(places);
        sections = List.copyOf(sections);
        part = List.copyOf(part);
        carrier = List.copyOf(carrier);
        rests = List.copyOf(rests);
        held = List.copyOf(held);
        clamps = List.copyOf(clamps);
        fittings = List.copyOf(fittings);
    }

    /** A place by its mark. */
    public Optional<FramePlace> place(String id) {
        return places.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** A section by its id. */
    public Optional<FrameSection> section(String id) {
        return sections.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** Whether everything lies and moves in the plane of the part, so that it is reckoned there. */
    public boolean plane() {
        Stream<FrameWay> ways = Stream.of(
                        rests.stream().flatMap(h -> h.ways().stream()),
                        held.stream().flatMap(h -> h.ways().stream()),
                        clamps.stream().map(FrameClamp::way),
                        adhesive.stream().map(FrameAdhesive::opens))
                .flatMap(s -> s);
        return places.stream().allMatch(p -> p.at().zMm() == 0)
                && ways.allMatch(w -> w.freedom().isInPlane())
                && Stream.concat(part.stream(), carrier.stream()).allMatch(r -> r.facing() == FrameWay.OUT);
    }
}
