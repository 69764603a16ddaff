package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.Hold;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.shop.Skill;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.mix.MixJob;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.mix.MixPlanner;
import fayline.flow.result.quantity.Shape;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.step.StepWindow;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes steps of all recipes of a project: parameters filled in, amounts and hands-on time computed, windows put on cure
 * clocks, and what has happened taken in.
 */
public final class StepExpander {
    private final Definition definition;
    private final ShopState state;
    private final ClockBook clocks;
    private final Names names;
    private final MakeTree tree;
    private final MixPlanner mixer;
    private final Amounts amounts;
    private final HandsOn handsOn;
    private final MixJobs jobs;
    private final Places places;
    private final Windows windows;
    private final Arrivals arrivals;
    private final SecondHands seconds;
    private final RecipeCheck recipeCheck;
    private final Temperature warmest;
    private final String project;

    /**
     * Prepares to expand.
     *
     * @param definition the definition
     * @param state what has happened
     * @param air the shop's air
     * @param clocks the book in which clocks are opened
     */
    public StepExpander(Definition definition, ShopState state, ShopAir air, ClockBook clocks) {
        this.definition = definition;
        this.state = state;
        this.clocks = clocks;
        this.project = definition.facts().id();
        this.names = new Names(definition);
        this.tree = new MakeTree(definition);
        this.mixer = new MixPlanner(definition);
        this.amounts = new Amounts(definition);
        this.handsOn = new HandsOn(amounts);
        this.jobs = new MixJobs(definition, amounts, handsOn);
        this.places = new Places(definition, state);
        this.windows = new Windows(definition, places, handsOn, clocks);
        this.arrivals = new Arrivals(definition, state.now(), tree);
        this.seconds = new SecondHands(definition, state, tree);
        this.recipeCheck = new RecipeCheck();
        this.warmest = air.warmestDay(definition.shop().zone());
    }

    /** A step on its way. */
    private record Draft(
            MakeNode node,
            RecipeStep step,
            StepAmounts amounts,
            List<MixList> batches,
            HandsOn.Time time,
            List<StepWindow> windows,
            Span alone,
            boolean whichWay,
            List<Finding> findings) {
        String local() {
            return node.local(step.id());
        }
    }

    /** Expands everything. */
    public Expansion expand() {
        List<Draft> drafts = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(arrivals.findings());
        List<Hold> holds = new ArrayList<>();
        Map<String, String> titles = new HashMap<>();
        for (MakeNode node : tree.all()) {
            node.steps()
                    .forEach(s -> titles.put(
                            node.local(s.id()),
                            names.of(node.made().id()) + ": " + node.with().words(s.title(), names)));
        }
        for (MakeNode node : tree.all()) {
            Shape shape = Shape.of(definition, node.made());
            findings.addAll(recipeCheck.check(node, shape));
            holds.addAll(places.holds(node, project));
            Optional<RecipeStep> wrongWay = recipeCheck.firstIrreversible(node);
            for (RecipeStep step : node.steps()) {
                boolean ask = step.whichWay() || wrongWay.filter(step::equals).isPresent();
                drafts.add(draft(node, step, shape, titles, ask));
            }
        }
        Behind behind = new Behind(
                state,
                project,
                drafts.stream()
                        .collect(Collectors.toMap(
                                Draft::local,
                                d -> d.windows().stream()
                                        .map(w -> w.link().step())
                                        .toList(),
                                (a, b) -> a,
                                LinkedHashMap::new)));
        drafts.replaceAll(d -> gated(d, behind, titles));
        Progress progress = new Progress(
                state,
                clocks,
                drafts.stream()
                        .map(d -> new Progress.Draft(
                                project + "/" + d.local(),
                                d.local(),
                                !d.time().hands().isEmpty(),
                                d.alone(),
                                d.windows().stream().map(StepWindow::link).toList()))
                        .toList());
        List<StepResult> steps =
                drafts.stream().map(d -> result(d, progress, behind)).toList();
        return new Expansion(steps, holds, clocks, tree, seconds.asked(), findings);
    }

    private Draft draft(MakeNode node, RecipeStep step, Shape shape, Map<String, String> titles, boolean whichWay) {
        StepAmounts taken = amounts.of(node, step, shape);
        List<Finding> findings = new ArrayList<>(taken.findings());
        Temperature at = Temperature.ofKelvins(warmest.kelvins() + places.workingK(node, step));
        Map<Integer, Integer> counted = new HashMap<>();
        IntUnaryOperator count = n -> counted.computeIfAbsent(
                n, k -> mixer.batches(jobs.of(node, step, shape, taken.mixes(), at, k, Optional.empty())));
        HandsOn.Time time = handsOn.of(node, step, shape, count, findings);
        int least = Math.max(1, step.crew().least());
        List<MixList> batches = new ArrayList<>();
        for (MixJob job : jobs.of(node, step, shape, taken.mixes(), at, least, Optional.empty())) {
            MixList list = mixer.list(job);
            batches.add(list);
            findings.addAll(MixFindings.of(node.local(step.id()), list));
        }
        List<StepWindow> waits = new ArrayList<>(windows.inner(node, step, shape, project, findings));
        if (node.isRoot(step)) {
            for (String local : tree.outer(node)) {
                waits.add(Windows.plain(project + "/" + local, titles.getOrDefault(local, local)));
            }
        }
        waits.addAll(seconds.of(node, step, waits, titles, findings));
        Span alone = windows.alone(node, step, findings);
        return new Draft(node, step, taken, batches, time, waits, alone, whichWay, findings);
    }

    /** The same waiting for the work that puts right what it depends on. */
    private Draft gated(Draft d, Behind behind, Map<String, String> titles) {
        List<String> rework = behind.rework(d.local());
        if (rework.isEmpty()) {
            return d;
        }
        List<StepWindow> waits = new ArrayList<>(d.windows());
        rework.forEach(r -> waits.add(Windows.plain(project + "/" + r, titles.getOrDefault(r, r))));
        return new Draft(
                d.node(), d.step(), d.amounts(), d.batches(), d.time(), waits, d.alone(), d.whichWay(), d.findings());
    }

    private StepResult result(Draft d, Progress progress, Behind behind) {
        RecipeStep step = d.step();
        With with = d.node().with();
        WorkStep work = work(d, progress, behind);
        return new StepResult(
                work.id(),
                d.node().made().id(),
                d.node().number(),
                step.id(),
                d.node().recipe().id(),
                step.kind(),
                work.title(),
                with.words(step.say(), names),
                with.words(step.checks(), names),
                with.words(step.record(), names),
                recipeCheck.cautions(definition, step, d.amounts()),
                step.hold(),
                d.whichWay(),
                d.amounts().stage(),
                d.amounts().plies(),
                d.amounts().mixes(),
                d.batches(),
                d.amounts().bag(),
                d.amounts().needs(),
                d.time().personMinutes(),
                d.time().figures(),
                d.windows(),
                d.findings(),
                work);
    }

    private WorkStep work(Draft d, Progress progress, Behind behind) {
        RecipeStep step = d.step();
        String id = project + "/" + d.local();
        Map<String, Integer> skills = new HashMap<>();
        for (Map.Entry<Skill, Integer> e : step.skills().entrySet()) {
            skills.put(e.getKey().key(), e.getValue());
        }
        return new WorkStep(
                id,
                project,
                d.node().made().id(),
                d.node().with().words(step.title(), names),
                step.kind().key(),
                d.time().hands(),
                skills,
                step.air().name().toLowerCase(Locale.ROOT),
                step.interruptible(),
                d.alone(),
                d.windows().stream().map(StepWindow::link).toList(),
                notBefore(d),
                Stream.concat(arrivals.awaitedBy(d.local()).stream(), behind.awaited(d.local()).stream())
                        .toList(),
                step.watch().stream().map(StepExpander::wholeMinutes).toList(),
                step.air() == RecipeStep.Air.WET && !step.hands().isEmpty(),
                progress.state(id),
                progress.actual(id));
    }

    /** The day set for a make, which binds its first steps. */
    private Optional<Instant> notBefore(Draft d) {
        return d.node()
                .make()
                .notBefore()
                .filter(day -> d.node().isRoot(d.step()))
                .map(day -> day.atStartOfDay(definition.shop().zone()).toInstant());
    }

    private static int wholeMinutes(TimeSpan span) {
        return (int) Math.round(span.minutes());
    }
}
