package fayline.method.fitup.outline;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.geometry.Outline;
import fayline.basis.geometry.OutlineShapes;
import fayline.basis.units.Amount;
import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Draws the part's edge from corners and radii or from traced points. A clockwise line is turned round and that is said; one
 * that crosses itself is refused, and so is a blend that does not fit, with the corner's number. Closed form.
 */
public final class OutlineCalculator {
    private static final double MM = 1e-3;
    private static final double SAME_PLACE = 1e-9;
    private static final double CROSSING_CHORD_MM = 0.05;
    private static final String GEOMETRY = "plane geometry";

    private OutlineCalculator() {}

    /** Answers the question. */
    public static OutlineResult calculate(OutlineShape shape) {
        return shape instanceof RoundedPolygon r ? rounded(r) : traced((TracedLine) shape);
    }

    /**
     * The same edge on the opposite hand: reflected, and walked counter-clockwise again. Corner 1 stays corner 1, the others
     * are counted the other way round.
     */
    public static PartOutline mirrored(PartOutline outline) {
        Function<Spot, Spot> flip = p -> new Spot(-p.xMm(), p.yMm());
        OutlineShape there = outline.shape() instanceof RoundedPolygon r
                ? new RoundedPolygon(turnedRound(r.corners().stream().map(flip).toList()), turnedRound(r.radiiMm()))
                : turned((TracedLine) outline.shape(), flip);
        return calculate(there)
                .outline()
                .orElseThrow(() -> new IllegalStateException("a drawn outline has a drawn mirror image"));
    }

    private static OutlineResult rounded(RoundedPolygon given) {
        List<Finding> findings = new ArrayList<>();
        boolean reversed = twiceArea(given.corners()) < 0;
        RoundedPolygon p =
                reversed ? new RoundedPolygon(turnedRound(given.corners()), turnedRound(given.radiiMm())) : given;
        if (crosses(p.corners())) {
            return refused(OutlineStatus.SELF_CROSSING, OptionalInt.empty(), reversed, crossing());
        }
        if (reversed) {
            findings.add(turnedRoundNote());
        }
        CornerBlends blends = new CornerBlends(p);
        OptionalInt bad = blends.tooLarge();
        if (bad.isPresent()) {
            int i = bad.getAsInt();
            int n = p.corners().size();
            int asGiven = reversed && i > 0 ? n - i : i;
            return refused(
                    OutlineStatus.BLEND_TOO_LARGE,
                    OptionalInt.of(asGiven + 1),
                    reversed,
                    stop(Phrase.of(
                            "The radius of %s at corner %d needs %s of each side beside it; together with the next"
                                    + " corner's that is more than the side has. Make it smaller.",
                            Amount.placeMm(p.radiiMm().get(i), 1),
                            asGiven + 1,
                            Amount.placeMm(blends.tangentMm(i), 1))));
        }
        PartOutline drawn = new PartOutline(p, blends.pieces());
        if (crosses(drawn.drawn(CROSSING_CHORD_MM))) {
            return refused(OutlineStatus.SELF_CROSSING, OptionalInt.empty(), reversed, crossing());
        }
        return new OutlineResult(OutlineStatus.OK, Optional.of(drawn), OptionalInt.empty(), reversed, findings);
    }

    private static OutlineResult traced(TracedLine given) {
        List<Finding> findings = new ArrayList<>();
        TracedLine line = fromFirstCorner(withoutRepeats(given));
        boolean reversed = line.points().size() >= 3 && twiceArea(line.points()) < 0;
        if (line.points().size() < 3 || crosses(line.points())) {
            return refused(OutlineStatus.SELF_CROSSING, OptionalInt.empty(), reversed, crossing());
        }
        if (reversed) {
            line = turned(line, Function.identity());
            findings.add(turnedRoundNote());
        }
        int n = line.points().size();
        List<Piece> pieces = new ArrayList<>();
        int edge = line.corners().isEmpty() ? 1 : 0;
        for (int i = 0; i < n; i++) {
            if (line.corners().contains(i)) {
                edge++;
            }
            pieces.add(Piece.straight(
                    "E" + edge, line.points().get(i), line.points().get((i + 1) % n)));
        }
        return new OutlineResult(
                OutlineStatus.OK, Optional.of(new PartOutline(line, pieces)), OptionalInt.empty(), reversed, findings);
    }

    /** Leaves out points that repeat the one before; a corner among them stays a corner. */
    private static TracedLine withoutRepeats(TracedLine line) {
        List<Spot> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        int n = line.points().size();
        for (int i = 0; i < n; i++) {
            Spot p = line.points().get(i);
            boolean repeats =
                    (!points.isEmpty() && points.get(points.size() - 1).distanceMm(p) <= SAME_PLACE)
                            || (i == n - 1 && line.points().get(0).distanceMm(p) <= SAME_PLACE);
            if (!repeats) {
                points.add(p);
            }
            int here = repeats && i == n - 1 ? 0 : points.size() - 1;
            if (line.corners().contains(i) && !corners.contains(here)) {
                corners.add(here);
            }
        }
        return points.size() < 3
                ? new TracedLine(line.points().subList(0, 3), List.of())
                : new TracedLine(points, corners.stream().sorted().toList());
    }

    private static TracedLine fromFirstCorner(TracedLine line) {
        if (line.corners().isEmpty() || line.corners().get(0) == 0) {
            return line;
        }
        int first = line.corners().get(0);
        int n = line.points().size();
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            points.add(line.points().get((first + i) % n));
        }
        return new TracedLine(
                points, line.corners().stream().map(c -> c - first).toList());
    }

    private static TracedLine turned(TracedLine line, Function<Spot, Spot> each) {
        int n = line.points().size();
        return new TracedLine(
                turnedRound(line.points().stream().map(each).toList()),
                line.corners().stream().map(c -> (n - c) % n).sorted().toList());
    }

    /** A loop the other way round; the first stays the first. */
    private static <T> List<T> turnedRound(List<T> loop) {
        List<T> turned = new ArrayList<>();
        for (int i = 0; i < loop.size(); i++) {
            turned.add(loop.get((loop.size() - i) % loop.size()));
        }
        return turned;
    }

    private static double twiceArea(List<Spot> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Spot a = ring.get(i);
            Spot b = ring.get((i + 1) % ring.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return twice;
    }

    private static boolean crosses(List<Spot> ring) {
        return !OutlineShapes.simple(ring.stream()
                        .map(p -> new Outline.Point(p.xMm() * MM, p.yMm() * MM))
                        .toList())
                || twiceArea(ring) == 0;
    }

    private static Finding crossing() {
        return stop(Phrase.plain(
                "The outline crosses or touches itself, or encloses nothing. Check the order of its points."));
    }

    private static Finding turnedRoundNote() {
        return new Finding(
                Severity.NOTE,
                "outline",
                "The points ran clockwise and have been turned round: corner 1 stays, the others count the other way.",
                GEOMETRY);
    }

    private static Finding stop(Phrase sentence) {
        return new Finding(Severity.STOP, "outline", sentence, GEOMETRY);
    }

    private static OutlineResult refused(OutlineStatus status, OptionalInt corner, boolean reversed, Finding why) {
        return new OutlineResult(status, Optional.empty(), corner, reversed, List.of(why));
    }
}
