package fayline.flow.result;

import fayline.basis.finding.Finding;
import fayline.flow.project.Definition;
import fayline.flow.project.piece.Divided;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.result.air.AirCheck;
import fayline.flow.result.air.AirNow;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.expand.Expansion;
import fayline.flow.result.expand.SetLimits;
import fayline.flow.result.expand.StepExpander;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.shop.Moulds;
import fayline.flow.result.shop.RunningClocks;
import fayline.flow.result.shop.WorkMaker;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.MouldUse;
import fayline.flow.result.step.OpenWindow;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Computes everything that follows from a definition and what has happened: the one place where the methods are put to a
 * project. Pure: the same definition and state give the same result.
 */
public final class ProjectCalculator {
    /** How far back cure clocks reach: what was mixed longer ago has cured. */
    private static final Duration BACK = Duration.ofDays(21);

    private ProjectCalculator() {}

    /**
     * Computes at the recipes' own rates.
     *
     * @param definition a verified definition: references lead somewhere
     * @param state what has happened
     */
    public static ProjectResult calculate(Definition definition, ShopState state) {
        return calculate(expand(definition, state), LearnedRates.NONE);
    }

    /**
     * Makes the recipes into steps at their own rates: the first half of the computing, from which rates are learned.
     *
     * @param definition a verified definition: references lead somewhere
     * @param state what has happened
     */
    public static Expanded expand(Definition definition, ShopState state) {
        return expand(definition, state, List.of());
    }

    /**
     * The same with pieces in wanted sets.
     *
     * @param whole a verified definition: references lead somewhere
     * @param state what has happened; sets that have begun stay
     * @param wanted ids of sets, as {@link fayline.flow.project.piece.Division} writes them; the rest is as usual
     */
    public static Expanded expand(Definition whole, ShopState state, Collection<String> wanted) {
        Definition definition =
                ReworkSteps.on(Divided.of(whole, PieceSetsOf.settled(whole, state), wanted), state.rework());
        ShopAir air = new ShopAir(
                definition.climate(), state.readings(), definition.shop().zone(), state.now());
        ClockBook clocks = new ClockBook(air, earliest(state), WorkMaker.horizon(state.now()));
        return new Expanded(
                whole, definition, state, air, clocks, new StepExpander(definition, state, air, clocks).expand());
    }

    /**
     * Computes all else.
     *
     * @param project the project's steps at the recipes' own rates
     * @param rates what the shop has learned; put on the steps to do
     */
    public static ProjectResult calculate(Expanded project, LearnedRates rates) {
        Definition definition = project.definition();
        ShopState state = project.state();
        ShopAir air = project.air();
        ClockBook clocks = project.clocks();
        Expansion recipes = project.expansion();
        List<StepResult> steps = rates.on(definition, recipes.steps());
        Expansion expansion = new Expansion(
                steps, recipes.holds(), recipes.clocks(), recipes.tree(), recipes.hands(), recipes.findings());
        Map<String, List<StepResult>> byMade = steps.stream().collect(Collectors.groupingBy(StepResult::made));
        Parts parts = new Parts(definition, state);
        List<PartResult> partResults = definition.parts().stream()
                .map(p -> parts.part(p, byMade.getOrDefault(p.id(), List.of())))
                .toList();
        List<JointResult> jointResults = definition.joints().stream()
                .map(j -> parts.joint(j, byMade.getOrDefault(j.id(), List.of())))
                .toList();
        RunningClocks running = new RunningClocks(definition, state, clocks, steps);
        List<ClockRunning> clocksRunning = running.clocks();
        List<OpenWindow> windows = running.windows();
        Moulds moulds = new Moulds(definition, state, steps);
        List<MouldUse> mouldUses = moulds.uses();
        AirNow airNow = AirCheck.check(definition, air);
        StoresResult stores = new StoresCheck(definition, state).check(steps, Map.of());
        List<Finding> findings = new ArrayList<>(expansion.findings());
        Map<String, SetLimits> limits = PieceSetsOf.limits(project);
        limits.values().forEach(l -> findings.addAll(l.findings()));
        steps.forEach(s -> findings.addAll(s.findings()));
        partResults.forEach(p -> findings.addAll(p.findings()));
        findings.addAll(moulds.findings(mouldUses));
        findings.addAll(airNow.findings());
        findings.addAll(stores.findings());
        return new ProjectResult(
                definition.hash(),
                definition.facts().id(),
                definition.facts().revision(),
                partResults,
                jointResults,
                steps,
                Drawn.sum(steps.stream().flatMap(s -> s.needs().stream()).toList()),
                clocksRunning,
                windows,
                air,
                airNow,
                stores,
                mouldUses,
                PieceSetsOf.withSets(project, rates, limits, WorkMaker.make(definition, state, expansion)),
                distinct(findings));
    }

    /** The same project's steps in other sets. */
    static Expansion expansion(Definition definition, Expanded project) {
        ShopState state = project.state();
        return new StepExpander(ReworkSteps.on(definition, state.rework()), state, project.air(), project.clocks())
                .expand();
    }

    /** The earliest moment from which something that happened may still count on a clock. */
    private static Instant earliest(ShopState state) {
        Instant back = state.now().minus(BACK);
        return state.steps().values().stream()
                .map(f -> f.started())
                .filter(t -> t.isAfter(back))
                .min(Instant::compareTo)
                .filter(t -> t.isBefore(state.now()))
                .orElse(state.now());
    }

    private static List<Finding> distinct(List<Finding> findings) {
        Set<Finding> seen = new LinkedHashSet<>(findings);
        return List.copyOf(seen);
    }
}
