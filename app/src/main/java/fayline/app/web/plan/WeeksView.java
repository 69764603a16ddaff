package fayline.app.web.plan;

import fayline.app.web.frame.StateWord;
import fayline.app.web.whatif.WhatIfView.LongStep;
import java.util.List;

/**
 * What Weeks shows.
 *
 * @param from the first day, in words
 * @param before address of the weeks before
 * @param after address of the weeks after
 * @param thisWeek address of this week
 * @param groups kinds of rows to choose from
 * @param spans lengths of time to choose from
 * @param chart the drawing
 * @param days the same as a list
 * @param finish the plan's end, in words; empty where nothing is planned
 * @param least what no plan can beat, in a sentence; empty where nobody asked
 * @param askLeast address that asks
 * @param unplanned steps that could not be planned, in sentences
 * @param longWork work left out that is too long for one day, with its ways out
 * @param conflicts what keeps them out, in sentences
 * @param goals dated goals against the plan
 * @param chain the steps that hold the end, the last one leading
 * @param wishes in how many acts the lead has wished what binds the plan
 */
public record WeeksView(
        String from,
        String before,
        String after,
        String thisWeek,
        List<Group> groups,
        List<Group> spans,
        String chart,
        List<Day> days,
        String finish,
        String least,
        String askLeast,
        List<String> unplanned,
        List<LongStep> longWork,
        List<String> conflicts,
        List<Goal> goals,
        List<Link> chain,
        int wishes) {
    /** Copies the lists. */
    public WeeksView {
        groups = List.copyOf(groups);
        spans = List.copyOf(spans);
        days = List.copyOf(days);
        unplanned = List.copyOf(unplanned);
        longWork = List.copyOf(longWork);
        conflicts = List.copyOf(conflicts);
        goals = List.copyOf(goals);
        chain = List.copyOf(chain);
    }

    /**
     * A step on the chain that holds the end.
     *
     * @param name the step
     * @param link its card
     * @param at when it begins
     * @param why why then
     */
    public record Link(String name, String link, String at, String why) {}

    /**
     * A dated goal.
     *
     * @param name what is reached
     * @param link where to look
     * @param state how it stands
     * @param words the planned day against the day it is due
     */
    public record Goal(String name, String link, StateWord state, String words) {}

    /**
     * A kind of rows.
     *
     * @param name its name
     * @param link the address that shows it
     * @param chosen whether it is shown
     */
    public record Group(String name, String link, boolean chosen) {}

    /**
     * A day of the list.
     *
     * @param name the day
     * @param steps what begins on it
     */
    public record Day(String name, List<Row> steps) {
        /** Copies the list. */
        public Day {
            steps = List.copyOf(steps);
        }
    }

    /**
     * A step.
     *
     * @param time from and to
     * @param what what on what
     * @param who who
     * @param where where
     * @param alone until when it goes on without hands; empty for not at all
     * @param link its card
     * @param why why it begins then and by how much it may slip; empty for what is begun
     * @param wished what is wished of it, in words; empty for nothing
     * @param decide where somebody may wish something of it; empty for what is begun
     */
    public record Row(
            String time,
            String what,
            String who,
            String where,
            String alone,
            String link,
            String why,
            String wished,
            String decide) {}
}
