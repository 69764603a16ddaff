package fayline.flow.project.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.frame.FitFrame;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.outline.OutlineShape;
import fayline.method.fitup.space.LiftLimits;
import java.util.List;
import java.util.Optional;

/**
 * An edge of a part against its neighbours.
 *
 * @param id the id
 * @param name the name
 * @param hand the hand where no part is named yet; a part's own hand counts before it
 * @param part the part that is fitted; empty where it was begun on the spot and no part is named yet
 * @param joint the joint that bonds it, where the fit names it
 * @param against its neighbours
 * @param wanted gap and flush wanted where a station says nothing else
 * @param stations marked places along the edge, in order
 * @param outline the part's edge, where it is drawn
 * @param marks places on the part at which a move is told, at most two
 * @param room how far the part may be moved
 * @param gauge what gaps are read with, where it is said
 * @param states the states the fit goes through, in order
 * @param holding stops, schemes and shims
 * @param cutting what may be cut
 * @param heat how part and surround grow, where it is said
 * @param frame the frame that springs, and its widths; none where nothing is said
 * @param lift how far a curved part may be moved out of its plane
 */
public record Fit(
        String id,
        String name,
        Hand hand,
        Optional<String> part,
        Optional<String> joint,
        List<String> against,
        FitWanted wanted,
        List<FitStation> stations,
        Optional<OutlineShape> outline,
        List<Mark> marks,
        MoveLimits room,
        Optional<FitGauge> gauge,
        List<FitState> states,
        FitHolding holding,
        FitCutting cutting,
        Optional<FitHeat> heat,
        FitFrame frame,
        LiftLimits lift)
        implements Keyed {
    /** Copies the lists. */
    public Fit {
        against = List.copyOf(against);
        stations = List.copyOf(stations);
        marks = List.copyOf(marks);
        states = List.copyOf(states);
    }

    /** A fit whose hand is its part's, without a joint or frame named. */
    public Fit(
            String id,
            String name,
            Optional<String> part,
            List<String> against,
            FitWanted wanted,
            List<FitStation> stations,
            Optional<OutlineShape> outline,
            List<Mark> marks,
            MoveLimits room,
            Optional<FitGauge> gauge,
            List<FitState> states,
            FitHolding holding,
            FitCutting cutting,
            Optional<FitHeat> heat) {
        this(
                id,
                name,
                Hand.NONE,
                part,
                Optional.empty(),
                against,
                wanted,
                stations,
                outline,
                marks,
                room,
                gauge,
                states,
                holding,
                cutting,
                heat,
                FitFrame.NONE,
                LiftLimits.WIDEST);
    }

    /** A station by its mark. */
    public Optional<FitStation> station(String mark) {
        return stations.stream().filter(s -> s.id().equals(mark)).findFirst();
    }

    /** The gap wanted at a station: its own, else the fit's. */
    public Entered<Length> gapAt(FitStation station) {
        return station.gap().orElse(wanted.gap());
    }

    /** By how much the gap may be off at a station, either way: its own tolerance, else the fit's. */
    public Entered<Length> gapToleranceAt(FitStation station) {
        return station.gapTolerance().orElse(wanted.gapTolerance());
    }

    /**
     * A marked place.
     *
     * @param name what it is called, as {@code upper aft corner}
     * @param at where
     * @param outMm how far outboard of the plane
     */
    public record Mark(String name, Spot at, double outMm) {
        /** A place in the plane. */
        public Mark(String name, Spot at) {
            this(name, at, 0);
        }

        /** The place in space, in mm. */
        public Vector place() {
            return Vector.of(at, outMm);
        }
    }
}
