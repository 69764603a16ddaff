package fayline.method.airfoil;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.geometry.Outline;
import fayline.basis.geometry.OutlineShapes;
import fayline.basis.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The outline of a rib in metres, x from the leading edge aft, y up, anticlockwise from the upper aft corner.
 *
 * @param net outline on the section, with its holes; empty where the rib cannot be cut
 * @param blank outline with the flange, the sheet to cut; empty where the rib cannot be cut
 * @param findings what is wrong or must be said
 */
public record RibOutline(Optional<Outline> net, Optional<Outline> blank, List<Finding> findings) {
    private static final int HOLE_CORNERS = 48;

    /** Copies the list. */
    public RibOutline {
        findings = List.copyOf(findings);
    }

    /** The outline of a rib. */
    public static RibOutline of(Rib rib) {
        if (!(rib.chord().metres() > 0)
                || !(rib.from() >= 0 && rib.from() < rib.to() && rib.to() <= 1)
                || rib.flange().metres() < 0) {
            return refused("The chord must be positive, the flange not negative, and the rib lie between 0 and 1 of the"
                    + " chord, its start before its end.");
        }
        List<Outline.Point> ring = ring(rib);
        if (ring.size() < 3 || !OutlineShapes.simple(ring)) {
            return refused("The outline of " + rib.section().name() + " crosses itself.");
        }
        List<List<Outline.Point>> holes = new ArrayList<>();
        for (Rib.Cutout c : rib.cutouts()) {
            if (!(c.diameter().metres() > 0)) {
                return refused("A cut-out needs a diameter above zero.");
            }
            List<Outline.Point> hole = hole(c);
            if (!OutlineShapes.contains(ring, hole)) {
                return refused(String.format(
                        Locale.ROOT,
                        "The cut-out of %.1f mm at x %.1f mm does not lie wholly inside the rib.",
                        c.diameter().millimetres(),
                        c.x().millimetres()));
            }
            if (holes.stream().anyMatch(h -> OutlineShapes.touch(h, hole))) {
                return refused(
                        String.format(Locale.ROOT, "The cut-out at x %.1f mm runs into another.", c.x().millimetres()));
            }
            holes.add(hole);
        }
        Outline net = new Outline(ring, holes);
        Optional<Outline> blank = OutlineShapes.grown(net, rib.flange());
        return blank.isEmpty()
                ? refused("The flange cannot be laid round this outline.")
                : new RibOutline(Optional.of(net), blank, List.of());
    }

    private static List<Outline.Point> ring(Rib rib) {
        List<Outline.Point> ring = new ArrayList<>();
        List<Airfoil.Station> lower = part(rib.section().lower(), rib.from(), rib.to());
        List<Airfoil.Station> upper = part(rib.section().upper(), rib.from(), rib.to());
        for (int i = lower.size() - 1; i >= 0; i--) {
            add(ring, lower.get(i), rib.chord());
        }
        for (Airfoil.Station s : upper) {
            add(ring, s, rib.chord());
        }
        if (ring.size() > 1 && near(ring.get(0), ring.get(ring.size() - 1))) {
            ring.remove(ring.size() - 1);
        }
        // The way round aft, forward under, back over is clockwise seen with y up; the house turns the other way.
        Collections.reverse(ring);
        return ring;
    }

    private static void add(List<Outline.Point> ring, Airfoil.Station s, Length chord) {
        Outline.Point p = new Outline.Point(s.x() * chord.metres(), s.y() * chord.metres());
        if (ring.isEmpty() || !near(ring.get(ring.size() - 1), p)) {
            ring.add(p);
        }
    }

    private static boolean near(Outline.Point a, Outline.Point b) {
        return Math.hypot(a.xM() - b.xM(), a.yM() - b.yM()) < 1e-9;
    }

    private static List<Airfoil.Station> part(List<Airfoil.Station> surface, double from, double to) {
        List<Airfoil.Station> part = new ArrayList<>();
        if (from > 0) {
            part.add(cut(surface, from));
        }
        for (Airfoil.Station s : surface) {
            if ((from == 0 || s.x() > from) && (to == 1 || s.x() < to)) {
                part.add(s);
            }
        }
        if (to < 1) {
            part.add(cut(surface, to));
        }
        return part;
    }

    private static Airfoil.Station cut(List<Airfoil.Station> surface, double x) {
        Airfoil.Station before = surface.get(0);
        for (Airfoil.Station s : surface) {
            if (s.x() >= x) {
                double span = s.x() - before.x();
                double y = span <= 0 ? s.y() : before.y() + (s.y() - before.y()) * (x - before.x()) / span;
                return new Airfoil.Station(x, y);
            }
            before = s;
        }
        return new Airfoil.Station(x, before.y());
    }

    private static List<Outline.Point> hole(Rib.Cutout c) {
        List<Outline.Point> ring = new ArrayList<>();
        for (int i = 0; i < HOLE_CORNERS; i++) {
            double angle = 2 * Math.PI * i / HOLE_CORNERS;
            ring.add(new Outline.Point(
                    c.x().metres() + c.diameter().metres() / 2 * Math.cos(angle),
                    c.y().metres() + c.diameter().metres() / 2 * Math.sin(angle)));
        }
        return ring;
    }

    private static RibOutline refused(String sentence) {
        return new RibOutline(
                Optional.empty(),
                Optional.empty(),
                List.of(new Finding(Severity.STOP, "rib", sentence, "[nasa-tm4741]")));
    }
}
