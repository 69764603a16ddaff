package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The part's edge, drawn: a closed line of straights and arcs, counter-clockwise seen from outside, in mm. Made by
 * {@link OutlineCalculator}; it cannot be changed.
 */
public final class PartOutline {
    private static final double SAME_PLACE = 1e-9;

    private final OutlineShape shape;
    private final List<Piece> pieces;
    private final double[] starts;
    private final double perimeterMm;
    private final double lastBlendMm;

    PartOutline(OutlineShape shape, List<Piece> pieces) {
        this.shape = shape;
        this.pieces = List.copyOf(pieces);
        this.starts = new double[pieces.size()];
        double s = 0;
        for (int i = 0; i < pieces.size(); i++) {
            starts[i] = s;
            s += pieces.get(i).lengthMm();
        }
        this.perimeterMm = s;
        Piece last = pieces.get(pieces.size() - 1);
        this.lastBlendMm = last.curvature() == 0 ? 0 : last.lengthMm();
    }

    /** What it was drawn from, counter-clockwise. */
    public OutlineShape shape() {
        return shape;
    }

    /** The length all round. */
    public double perimeterMm() {
        return perimeterMm;
    }

    /** An arc length brought into the range from 0 to below the perimeter. */
    public double wrappedMm(double sMm) {
        double s = sMm - perimeterMm * Math.floor(sMm / perimeterMm);
        return s >= perimeterMm || s < 0 ? 0 : s;
    }

    /** The place at an arc length, which counts modulo the perimeter. */
    public EdgePoint at(double sMm) {
        if (!Double.isFinite(sMm)) {
            throw new IllegalArgumentException("no arc length: " + sMm);
        }
        double s = wrappedMm(sMm);
        int i = pieceAt(s);
        double u = s - starts[i];
        boolean sharp = (u <= SAME_PLACE && sharpBefore(i))
                || (starts[i] + pieces.get(i).lengthMm() - s <= SAME_PLACE && sharpBefore(i + 1));
        return point(sMm, i, u, sharp);
    }

    /**
     * The station at an arc length.
     *
     * @param id its mark
     * @param sMm arc length
     * @param run the run it belongs to; needed on a sharp corner only
     * @return empty on a sharp corner where the run named is neither of the two that meet there (NORMAL_UNDEFINED)
     */
    public Optional<Station> station(String id, double sMm, String run) {
        EdgePoint p = at(sMm);
        if (!p.sharp()) {
            return Optional.of(new Station(id, p.at(), p.nx(), p.ny()));
        }
        double s = wrappedMm(sMm);
        int i = pieceAt(s);
        int after = s - starts[i] <= SAME_PLACE ? i : i + 1;
        for (int k : new int[] {after % pieces.size(), (after + pieces.size() - 1) % pieces.size()}) {
            if (pieces.get(k).run().equals(run)) {
                double u = k == after % pieces.size() ? 0 : pieces.get(k).lengthMm();
                EdgePoint side = point(sMm, k, u, true);
                return Optional.of(new Station(id, p.at(), side.nx(), side.ny()));
            }
        }
        return Optional.empty();
    }

    /**
     * The point of the outline nearest to a place, told by its arc length; the first one at a tie.
     *
     * @param place anywhere in the plane
     */
    public EdgePoint nearest(Spot place) {
        double best = Double.POSITIVE_INFINITY;
        double s = 0;
        for (int i = 0; i < pieces.size(); i++) {
            double u = pieces.get(i).nearest(place);
            double d = pieces.get(i).at(u).distanceMm(place);
            if (d < best - SAME_PLACE) {
                best = d;
                s = starts[i] + u;
            }
        }
        return at(wrappedMm(s));
    }

    /** The runs in order from arc length 0: E1, C2, E2, ... as far as they have a length. */
    public List<EdgeRun> runs() {
        List<EdgeRun> runs = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            String name = pieces.get(i).run();
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).name().equals(name)) {
                EdgeRun r = runs.get(last);
                runs.set(
                        last,
                        new EdgeRun(
                                name, r.fromMm(), r.lengthMm() + pieces.get(i).lengthMm()));
            } else {
                runs.add(new EdgeRun(name, starts[i], pieces.get(i).lengthMm()));
            }
        }
        return runs;
    }

    /** The edges as a builder sees them: each E run with half of the blend at either end; together they are the whole outline. */
    public List<EdgeRun> edges() {
        List<EdgeRun> runs = runs();
        List<EdgeRun> edges = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            EdgeRun r = runs.get(i);
            if (isBlend(r)) {
                continue;
            }
            EdgeRun before = runs.get((i + runs.size() - 1) % runs.size());
            EdgeRun after = runs.get((i + 1) % runs.size());
            double atStart = isBlend(before) ? before.lengthMm() / 2 : 0;
            double atEnd = isBlend(after) ? after.lengthMm() / 2 : 0;
            edges.add(new EdgeRun(r.name(), wrappedMm(r.fromMm() - atStart), r.lengthMm() + atStart + atEnd));
        }
        return edges;
    }

    /**
     * Points of the whole line for a drawing, the first not repeated at the end.
     *
     * @param chordErrorMm how far a chord may be from the curve; positive
     */
    public List<Spot> drawn(double chordErrorMm) {
        needError(chordErrorMm);
        List<Spot> points = new ArrayList<>();
        for (Piece p : pieces) {
            List<Double> steps = p.steps(chordErrorMm);
            for (double u : steps.subList(0, steps.size() - 1)) {
                points.add(p.at(u));
            }
        }
        return points;
    }

    /** The enclosed area in mm², arcs included. */
    public double areaMm2() {
        double twice = 0;
        for (Piece p : pieces) {
            Spot a = p.start();
            Spot b = p.at(p.lengthMm());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
            if (p.curvature() != 0) {
                double sweep = p.curvature() * p.lengthMm();
                twice += (sweep - Math.sin(sweep)) / (p.curvature() * p.curvature());
            }
        }
        return twice / 2;
    }

    /**
     * Where a place of this outline lies on the outline of the opposite hand, {@link OutlineCalculator#mirrored}.
     *
     * @param sMm arc length here
     * @return arc length there
     */
    public double mirroredMm(double sMm) {
        double s = perimeterMm - lastBlendMm - wrappedMm(sMm);
        return s - perimeterMm * Math.floor(s / perimeterMm);
    }

    List<Piece> pieces() {
        return pieces;
    }

    double startMm(int piece) {
        return starts[piece];
    }

    EdgePoint point(double asked, int i, double u, boolean sharp) {
        Piece p = pieces.get(i);
        if (shape instanceof TracedLine) {
            TangentWindow.Direction d = TangentWindow.at(this, i, u);
            return new EdgePoint(asked, p.at(u), d.ty(), -d.tx(), p.run(), sharp, d.turnRad());
        }
        return new EdgePoint(asked, p.at(u), p.directionYAt(u), -p.directionXAt(u), p.run(), sharp, 0);
    }

    /** Whether the joint before a piece is a corner at which the direction jumps and no fit goes across. */
    boolean sharpBefore(int piece) {
        Piece p = pieces.get(piece % pieces.size());
        Piece before = pieces.get((piece + pieces.size() - 1) % pieces.size());
        if (shape instanceof TracedLine line) {
            return !line.corners().isEmpty()
                    && (!p.run().equals(before.run())
                            || (piece % pieces.size() == 0 && line.corners().size() == 1));
        }
        double ex = before.directionXAt(before.lengthMm());
        double ey = before.directionYAt(before.lengthMm());
        return Math.abs(ex * p.ty() - ey * p.tx()) > SAME_PLACE || ex * p.tx() + ey * p.ty() < 0;
    }

    static void needError(double chordErrorMm) {
        if (!(chordErrorMm > 0)) {
            throw new IllegalArgumentException("the chord error must be positive, not " + chordErrorMm);
        }
    }

    private int pieceAt(double s) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int mid = (low + high + 1) / 2;
            if (starts[mid] <= s) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return low;
    }

    private boolean isBlend(EdgeRun run) {
        return run.name().startsWith("C");
    }
}
