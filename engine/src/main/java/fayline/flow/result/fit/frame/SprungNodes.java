package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.flow.project.fit.frame.FrameRun;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodeNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Places as the nodes of beams. A place at which both have beams is one node where they are tied hard, and two where adhesive
 * lies between them.
 */
final class SprungNodes implements NodeNames {
    private final FrameBeams beams;
    private final List<FramePoint> nodes = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> part = new HashMap<>();
    private final Map<String, Integer> carrier = new HashMap<>();

    SprungNodes(FrameBeams beams) {
        this.beams = beams;
        Set<String> ofPart = used(beams.part());
        Set<String> ofCarrier = used(beams.carrier());
        for (FramePlace p : beams.places()) {
            boolean both = ofPart.contains(p.id()) && ofCarrier.contains(p.id());
            if (ofPart.contains(p.id())) {
                part.put(p.id(), add(p));
            }
            if (ofCarrier.contains(p.id())) {
                carrier.put(p.id(), both && beams.adhesive().isEmpty() ? known(part, p.id()) : add(p));
            }
        }
    }

    private static Set<String> used(List<FrameRun> runs) {
        Set<String> all = new LinkedHashSet<>();
        runs.forEach(r -> all.addAll(r.through()));
        return all;
    }

    private int add(FramePlace p) {
        nodes.add(p.at());
        names.add(p.id());
        return nodes.size() - 1;
    }

    /** The node of the part at a place. */
    Optional<Integer> part(String place) {
        return Optional.ofNullable(part.get(place));
    }

    /** The node of the carrier at a place. */
    Optional<Integer> carrier(String place) {
        return Optional.ofNullable(carrier.get(place));
    }

    /** Places at which part and carrier are bonded, in order. */
    List<FramePlace> bonded() {
        return beams.places().stream()
                .filter(p -> part.containsKey(p.id()) && carrier.containsKey(p.id()))
                .toList();
    }

    Frame part(Map<String, BeamSection> sections) {
        return frame(beams.part(), part, sections);
    }

    Frame carrier(Map<String, BeamSection> sections) {
        return frame(beams.carrier(), carrier, sections);
    }

    /** What was read and verified before: it is there. */
    private static <V> V known(Map<String, V> map, String id) {
        return Objects.requireNonNull(map.get(id), id);
    }

    private Frame frame(List<FrameRun> runs, Map<String, Integer> at, Map<String, BeamSection> sections) {
        List<Beam> all = new ArrayList<>();
        for (FrameRun r : runs) {
            for (int i = 1; i < r.through().size(); i++) {
                all.add(new Beam(
                        known(at, r.through().get(i - 1)),
                        known(at, r.through().get(i)),
                        known(sections, r.section()),
                        r.facing().axis()));
            }
        }
        return new Frame(nodes, all, beams.plane());
    }

    /** The place of a node. */
    @Override
    public String node(int node) {
        return names.get(node);
    }

    @Override
    public String freedom(Freedom freedom) {
        return switch (freedom) {
            case UX -> "along";
            case UY -> "up";
            case UZ -> "out";
            case RX -> "turning about along";
            case RY -> "turning about up";
            case RZ -> "turning in its plane";
        };
    }
}
