package fayline.method.fitup.mirror;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Relief;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.shim.IndexPoint;
import fayline.method.fitup.space.FlushMove;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The reflection of everything a fit consists of; doing it twice gives back what was there. */
public final class OppositeHand {
    private OppositeHand() {}

    /** A place. */
    public static Spot of(Spot place) {
        return new Spot(other(place.xMm()), place.yMm());
    }

    /** A station; its mark stays. */
    public static Station of(Station s) {
        Relief r = s.relief();
        return new Station(
                s.id(), of(s.at()), other(s.nx()), s.ny(), new Relief(r.heightMm(), r.normalZ(), of(r.surface())));
    }

    /** A row; gap, limits, weight and edge stay. */
    public static FitRow of(FitRow r) {
        return new FitRow(
                of(r.station()),
                r.gapMm(),
                r.lowerMm(),
                r.nominalMm(),
                r.upperMm(),
                r.minimumMm(),
                r.weight(),
                r.edge());
    }

    /** A place or a direction in space. */
    public static Vector of(Vector v) {
        return new Vector(other(v.x()), v.y(), v.z());
    }

    /** A move in space, about the mirrored pivot: a turn is an axial vector, so its parts about y and z change sign. */
    public static SpaceMove of(SpaceMove m) {
        Vector t = m.turnRad();
        return new SpaceMove(of(m.shiftMm()), new Vector(t.x(), other(t.y()), other(t.z())));
    }

    /** A move, about the mirrored pivot. */
    public static Move of(Move m) {
        return new Move(other(m.dxMm()), m.dyMm(), other(m.turnRad()));
    }

    /** A move out of the plane, about the mirrored pivot. */
    public static FlushMove of(FlushMove m) {
        return new FlushMove(m.dzMm(), m.rxRad(), other(m.ryRad()));
    }

    /** Limits of a move. */
    public static MoveLimits of(MoveLimits l) {
        return new MoveLimits(
                other(l.dxHighMm()),
                other(l.dxLowMm()),
                l.dyLowMm(),
                l.dyHighMm(),
                other(l.turnHighRad()),
                other(l.turnLowRad()));
    }

    /** The outline; arc lengths there follow from {@link PartOutline#mirroredMm}. */
    public static PartOutline of(PartOutline outline) {
        return OutlineCalculator.mirrored(outline);
    }

    /** An index point; clearance and so its shim stay. */
    public static IndexPoint of(IndexPoint p) {
        return new IndexPoint(of(p.contact()), p.clearanceMm(), p.shimmed());
    }

    /** A stop. */
    public static Stop of(Stop s) {
        return new Stop(of(s.contact()), s.travelMm(), s.stiffness());
    }

    /** One thing that locates the part; its uncertainties stay. */
    public static Locator of(Locator locator) {
        if (locator instanceof Locator.Pins p) {
            return new Locator.Pins(p.name(), of(p.pin1()), of(p.pin2()), p.playMm(), p.positionMm());
        }
        return locator.withStops(OppositeHand::of);
    }

    /** A locating scheme. */
    public static Scheme of(Scheme s) {
        return new Scheme(s.name(), s.locators().stream().map(OppositeHand::of).toList(), s.creepMm());
    }

    /** Stations in loop order: each mirrored, the list turned round. */
    public static List<Station> stations(List<Station> all) {
        return turned(all.stream().map(OppositeHand::of).toList());
    }

    /** Rows in loop order: each mirrored, the list turned round. */
    public static List<FitRow> rows(List<FitRow> all) {
        return turned(all.stream().map(OppositeHand::of).toList());
    }

    /** What goes with each station and stays, as trim depths or gaps: the list turned round. */
    public static <T> List<T> turned(List<T> perStation) {
        List<T> all = new ArrayList<>(perStation);
        Collections.reverse(all);
        return List.copyOf(all);
    }

    /** The sign changed, without a negative nought. */
    private static double other(double value) {
        return 0.0 - value;
    }
}
