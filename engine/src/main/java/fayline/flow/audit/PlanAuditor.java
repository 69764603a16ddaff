package fayline.flow.audit;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Judges a plan, whoever made it, by the rules that {@link fayline.flow.plan} states. Knows nothing of planning: it looks
 * only at the work and the plan, and works out cures, windows and occupied places itself.
 */
public final class PlanAuditor {
    private static final List<PlanRule> RULES_OF_WORK = List.of(
            new NamesAreGivenOnce(),
            new NamesInTheWorkAreKnown(),
            new NoStepWaitsForItself(),
            new HoldsOfferEnoughPlaces(),
            new HoursAreInOrder(),
            new ClocksRun(),
            new StepsMakeSense(),
            new StatesAgreeWithWhatHappened());

    private static final List<PlanRule> RULES_OF_PLANS = List.of(
            new OnlyKnownNames(),
            new EveryPieceIsInOneSet(),
            new SetsKeepTheirLimits(),
            new EveryStepIsThere(),
            new EveryStepIsPlanned(),
            new WhatHappenedStays(),
            new TimesAreOnWholeMinutes(),
            new NothingStartsInThePast(),
            new NothingStartsBeforeItsDay(),
            new DeliveriesHaveCome(),
            new WishesAreKept(),
            new StretchesFitTheStep(),
            new WetWorkIsNotInterrupted(),
            new WorkThatMayNotStopRunsThrough(),
            new StepsLastTheirTime(),
            new CuresLastTheirTime(),
            new EarlierStepsComeFirst(),
            new WindowsAreOpen(),
            new HardWindowsAreNotMissed(),
            new MissedWindowsArePaid(),
            new PeopleWorkInTheirHours(),
            new NobodyWorksInABreak(),
            new NobodyIsInTwoPlaces(),
            new CrewHasTheSkills(),
            new CrewIsBigEnough(),
            new PractisedHandsDoTheSecond(),
            new NobodyLaminatesAlone(),
            new BagsAreWatched(),
            new HoldsStayInPlace(),
            new OneCureInAMouldAtATime(),
            new OneJobOnAStandAtATime(),
            new OneBagOnAPort(),
            new StandsSuitTheWork(),
            new DustStaysAwayFromWetWork(),
            new FinishIsTheLastEnd());

    /**
     * Every broken rule of the work and the plan, those of the work first, in the order of the rules and then of the plan.
     * Never throws for what the values say, however little sense they make.
     *
     * @param work the work
     * @param plan the plan made for it
     * @return the broken rules; empty when the plan can be done and is whole
     */
    public List<BrokenRule> audit(Work work, Plan plan) {
        Audited audited = new Audited(work.inSetsOf(plan), plan);
        List<BrokenRule> found = new ArrayList<>();
        for (PlanRule rule : rules()) {
            found.addAll(rule.judge(audited));
        }
        return List.copyOf(found);
    }

    /** The names of all rules, in the order in which they are judged. */
    public static List<String> ruleNames() {
        return rules().stream().map(PlanRule::name).toList();
    }

    private static List<PlanRule> rules() {
        return Stream.concat(RULES_OF_WORK.stream(), RULES_OF_PLANS.stream()).toList();
    }
}
