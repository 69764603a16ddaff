package fayline.app.web.whatif;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.whatif.WhatIfView.LongStep;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.whatif.LongWork;
import java.util.List;

/** Work too long for one day of its least crew, with the page that compares its ways out. */
public final class LongWorkViews {
    private static final int MOST = 20;

    private LongWorkViews() {}

    /** The questions to stand side by side for a step; empty where there is no way out or no such step. */
    static List<String> questions(Sight sight, String text) {
        return sight
                .work(Asked.stepId(text))
                .map(s -> LongWork.waysOut(sight.work(), s, SerialPlanner.quick()))
                .orElse(List.of())
                .stream()
                .map(Asked::text)
                .toList();
    }

    /** The first few such steps of the plan; empty where there is none. */
    public static List<LongStep> of(Sight sight) {
        return LongWork.in(sight.work()).stream()
                .limit(MOST)
                .map(s -> view(sight, s))
                .toList();
    }

    private static LongStep view(Sight sight, WorkStep s) {
        WorkStep.CrewTime least = s.hands().get(0);
        String takes = sight.format().span(TimeSpan.ofMinutes(least.minutes())) + " by " + people(least.people())
                + " without a stop, and the longest day of anybody is "
                + sight.format().span(TimeSpan.ofMinutes((double) LongWork.longestStretchMin(sight.work())));
        String planned = sight.planned(s.id())
                .map(p -> "planned with " + people(p.people().size()) + " on "
                        + sight.time().at(p.start()))
                .orElse("it has no place in the plan");
        return new LongStep(
                sight.stepName(s.id()),
                takes + "; " + planned + ".",
                "/what-if?ways=" + Visit.encoded(Asked.plain(s.id())));
    }

    private static String people(int n) {
        return n == 1 ? "one" : Integer.toString(n);
    }
}
