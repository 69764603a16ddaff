package fayline.flow.result.state;

import fayline.basis.units.Entered;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.flow.project.Climate;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.record.made.MadeState;
import fayline.flow.record.stock.StockState;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What has happened to one project in its shop up to a moment. A plain value: whoever keeps the record makes it, and the
 * calculator draws the conclusions (whether a cure still runs, which windows are open).
 *
 * @param now the moment; nothing after it is known, everything after it is forecast
 * @param steps what happened to each step that was begun, by {@code made/make-number/key}
 * @param readings readings of the shop's air beyond those that stand in the definition, up to now, in any order
 * @param weighed the latest weighed mass of a part, by part
 * @param moulds the release state of moulds where it is known better than by counting demouldings from the definition's state
 * @param notes what was noted at steps, in the order of time
 * @param used lots that went into steps
 * @param counted volunteers whom the lead counts on; others are left out of the plan
 * @param made what the bench told of lots, mixes and plies, of all projects
 * @param stock what moved the stores beside the work
 * @param waiting what is open, for which others must wait
 * @param rework work that puts deviations right
 */
public record ShopState(
        Instant now,
        Map<String, StepFacts> steps,
        List<Climate.Reading> readings,
        Map<String, Entered<Mass>> weighed,
        Map<String, MouldFacts> moulds,
        List<Note> notes,
        List<LotUse> used,
        Set<String> counted,
        MadeState made,
        StockState stock,
        List<Waiting> waiting,
        List<ReworkSteps.Piece> rework) {
    /** Copies the collections. */
    public ShopState {
        steps = Map.copyOf(steps);
        readings = List.copyOf(readings);
        weighed = Map.copyOf(weighed);
        moulds = Map.copyOf(moulds);
        notes = List.copyOf(notes);
        used = List.copyOf(used);
        counted = Set.copyOf(counted);
        waiting = List.copyOf(waiting);
        rework = List.copyOf(rework);
    }

    /** A state in which the bench told nothing of lots and nothing moved the stores. */
    public ShopState(
            Instant now,
            Map<String, StepFacts> steps,
            List<Climate.Reading> readings,
            Map<String, Entered<Mass>> weighed,
            Map<String, MouldFacts> moulds,
            List<Note> notes,
            List<LotUse> used,
            Set<String> counted) {
        this(
                now,
                steps,
                readings,
                weighed,
                moulds,
                notes,
                used,
                counted,
                MadeState.NONE,
                StockState.NONE,
                List.of(),
                List.of());
    }

    /**
     * Something open, for which all must wait that depends on what it is about.
     *
     * @param id its id, unlike any delivery's
     * @param what what is waited for, in words
     * @param about the step, {@code made/make-number/key}, or the part or joint, {@code made}
     */
    public record Waiting(String id, String what, String about) {}

    /** The same with something open, and work that puts right what came out other than drawn. */
    public ShopState withTroubles(List<Waiting> open, List<ReworkSteps.Piece> work) {
        return new ShopState(now, steps, readings, weighed, moulds, notes, used, counted, made, stock, open, work);
    }

    /** A state in which nothing has happened yet: what a bare folder without a history stands for. */
    public static ShopState at(Instant now) {
        return new ShopState(now, Map.of(), List.of(), Map.of(), Map.of(), List.of(), List.of(), Set.of());
    }

    /** The same with other moves of the stores. */
    public ShopState withStores(MadeState told, StockState moved) {
        return new ShopState(now, steps, readings, weighed, moulds, notes, used, counted, told, moved, waiting, rework);
    }

    /** The same with other facts of steps. */
    public ShopState withSteps(Map<String, StepFacts> facts) {
        return new ShopState(now, facts, readings, weighed, moulds, notes, used, counted, made, stock, waiting, rework);
    }

    /** The same with other readings of the air. */
    public ShopState withReadings(List<Climate.Reading> taken) {
        return new ShopState(now, steps, taken, weighed, moulds, notes, used, counted, made, stock, waiting, rework);
    }

    /** The same with other notes. */
    public ShopState withNotes(List<Note> told) {
        return new ShopState(now, steps, readings, weighed, moulds, told, used, counted, made, stock, waiting, rework);
    }

    /** The same at another moment. */
    public ShopState withNow(Instant moment) {
        return new ShopState(
                moment, steps, readings, weighed, moulds, notes, used, counted, made, stock, waiting, rework);
    }

    /**
     * What happened to a step.
     *
     * @param started when the hands began
     * @param handsEnded when the hands left: what finishing a card says
     * @param ended when its unattended time was declared over; otherwise it is computed from the air that was read
     * @param people ids of those who worked
     * @param places ids of moulds, stands and ports where it happened; where empty, the candidates of the definition
     * @param minutes person-minutes booked; 0 where nothing was booked
     */
    public record StepFacts(
            Instant started,
            Optional<Instant> handsEnded,
            Optional<Instant> ended,
            List<String> people,
            List<String> places,
            int minutes) {
        /** Copies the lists. */
        public StepFacts {
            people = List.copyOf(people);
            places = List.copyOf(places);
        }
    }

    /**
     * The release state of a mould.
     *
     * @param pulls pulls so far
     * @param sinceTouchUp pulls since the last touch-up
     * @param sinceFull pulls since the last full release
     */
    public record MouldFacts(int pulls, int sinceTouchUp, int sinceFull) {}

    /**
     * A note.
     *
     * @param step the step, as {@code made/make-number/key}
     * @param at when
     * @param by who, as an id
     * @param text what, as typed
     */
    public record Note(String step, Instant at, String by, String text) {}

    /**
     * A lot that went into a step.
     *
     * @param step the step, as {@code made/make-number/key}
     * @param lot the lot
     * @param amount how much
     */
    public record LotUse(String step, String lot, Entered<? extends Quantity> amount) {}
}
