package fayline.flow.card;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Angle;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Quantity;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.design.Hand;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.ClockRunning;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * One card: the whole of a step for someone who has not seen it.
 *
 * @param step the step's id
 * @param heading project, part, revision: what it belongs to
 * @param kind what sort of work
 * @param title what is done
 * @param whichWay which way round, to be answered before the hands begin; empty where there is nothing to mistake
 * @param when who, where and when
 * @param plies plies and core in the order of laying
 * @param mixes what goes on the scale
 * @param bag the bag from the part outward; empty where none is drawn
 * @param fetch everything to fetch from the stores
 * @param say instructions in order
 * @param checks what is checked, each with its limit
 * @param readings what is read off and written down
 * @param signed whether a signature is needed before what follows; a tick is no licensed signature
 * @param windows in which windows the step must begin, and which it opens
 * @param clocks cures that run in this step, or in one that it waits for, soonest state first
 * @param cautions dangers of this step
 * @param lessons what earlier parts and the opposite hand taught
 * @param findings what the computation says about this step
 * @param figures the figures on the card, each with its why
 */
public record Card(
        String step,
        Heading heading,
        StepKind kind,
        String title,
        Optional<WhichWay> whichWay,
        When when,
        List<PlyLine> plies,
        List<MixLine> mixes,
        List<BagLine> bag,
        List<FetchLine> fetch,
        List<String> say,
        List<String> checks,
        List<String> readings,
        boolean signed,
        List<WindowLine> windows,
        List<ClockRunning> clocks,
        List<Caution> cautions,
        List<String> lessons,
        List<Finding> findings,
        List<Figure> figures) {
    /** Copies the lists. */
    public Card {
        plies = List.copyOf(plies);
        mixes = List.copyOf(mixes);
        bag = List.copyOf(bag);
        fetch = List.copyOf(fetch);
        say = List.copyOf(say);
        checks = List.copyOf(checks);
        readings = List.copyOf(readings);
        windows = List.copyOf(windows);
        clocks = List.copyOf(clocks);
        cautions = List.copyOf(cautions);
        lessons = List.copyOf(lessons);
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
    }

    /**
     * What the card belongs to.
     *
     * @param project the project's id
     * @param aircraft name and serial
     * @param design the design
     * @param revision its revision
     * @param definition hash of the definition
     * @param made the part or joint
     * @param name its name
     * @param hand its hand
     * @param opposite name of the part of the other hand; empty where there is none
     * @param drawing the drawing; empty where none is named
     */
    public record Heading(
            String project,
            String aircraft,
            String design,
            String revision,
            String definition,
            String made,
            String name,
            Hand hand,
            String opposite,
            String drawing) {}

    /**
     * Which way round.
     *
     * @param orient how it lies, as the definition says
     * @param question what to answer aloud before the hands begin
     */
    public record WhichWay(String orient, String question) {}

    /**
     * Who, where, when.
     *
     * @param state how far the step is
     * @param start when the hands begin or began; empty where it is not planned
     * @param handsEnd when the hands leave
     * @param end when its unattended time is over
     * @param people names of the crew
     * @param crew how many are needed and how many still help, in words
     * @param places names of moulds, stands and ports
     * @param watch when someone must look at it
     * @param zone the shop's zone, for showing times
     * @param unplanned why it is not planned; empty where it is
     */
    public record When(
            WorkStep.State state,
            Optional<Instant> start,
            Optional<Instant> handsEnd,
            Optional<Instant> end,
            List<String> people,
            String crew,
            List<String> places,
            List<Instant> watch,
            ZoneId zone,
            String unplanned) {
        /** Copies the lists. */
        public When {
            people = List.copyOf(people);
            places = List.copyOf(places);
            watch = List.copyOf(watch);
        }
    }

    /**
     * A ply or core layer.
     *
     * @param order its place in this step, from 1, mould face first
     * @param zone the zone's name
     * @param material the material's name
     * @param angle fibre direction against the part's axis
     * @param core whether it is core
     * @param area the area it covers
     */
    public record PlyLine(int order, String zone, String material, Angle angle, boolean core, Area area) {}

    /**
     * A mix.
     *
     * @param name the system's name
     * @param list the batches with their scale weights
     * @param lots lots in the order in which to take them, resin and hardener told apart
     */
    public record MixLine(String name, MixList list, List<String> lots) {
        /** Copies the list. */
        public MixLine {
            lots = List.copyOf(lots);
        }
    }

    /**
     * A layer of the bag.
     *
     * @param order its place from the part outward, from 1
     * @param what what it is
     * @param material the material's name; empty where the catalog has none
     * @param size how much: an area of a sheet, a length of tape
     * @param margin how far it reaches beyond the lay-up
     */
    public record BagLine(int order, String what, String material, Quantity size, Length margin) {}

    /**
     * Something to fetch.
     *
     * @param name the name
     * @param amount how much, waste included
     * @param purpose what for
     * @param lots lots in the order in which to take them
     */
    public record FetchLine(String name, Quantity amount, String purpose, List<String> lots) {
        /** Copies the list. */
        public FetchLine {
            lots = List.copyOf(lots);
        }
    }

    /**
     * A window.
     *
     * @param what the step it counts from, or the step that must begin after this one
     * @param before whether this step must begin in it; otherwise it opens with this step
     * @param opens when it opens, where that can be told
     * @param shuts when it shuts, where it does and that can be told
     * @param says the spans and what rules them, in words
     * @param miss what a missed window costs, in words; empty where it never shuts
     */
    public record WindowLine(
            String what, boolean before, Optional<Instant> opens, Optional<Instant> shuts, String says, String miss) {}
}
