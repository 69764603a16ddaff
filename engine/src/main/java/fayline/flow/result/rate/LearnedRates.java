package fayline.flow.result.rate;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.project.Definition;
import fayline.flow.result.rate.ProjectTimes.Begun;
import fayline.flow.result.step.StepResult;
import fayline.method.rate.BookedWork;
import fayline.method.rate.RatePrior;
import fayline.method.rate.Rates;
import fayline.method.rate.Rates.KindRate;
import fayline.method.rate.RatesCalculator;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the shop has learned from all its projects. It joins the plan's inputs with its origin and never rewrites a definition:
 * adopting a learned rate is an edit by the lead.
 *
 * @param rates the rates
 * @param estimatedMin person-minutes of all steps at the recipes' own rates
 * @param months hours worked in each month that saw work
 * @param repeats how often each sort of step was begun
 */
public record LearnedRates(
        Rates rates, double estimatedMin, SortedMap<YearMonth, Double> months, Map<String, Integer> repeats) {
    /** Nothing learned yet. */
    public static final LearnedRates NONE = new LearnedRates(Rates.NONE, 0, new TreeMap<>(), Map.of());

    private static final int ROUND_MIN = 5;
    private static final double NEARLY = 1e-9;
    private static final double NO_CHANGE = 1e-6;

    /** Copies the collections. */
    public LearnedRates {
        months = Collections.unmodifiableSortedMap(new TreeMap<>(months));
        repeats = Map.copyOf(repeats);
    }

    /**
     * Learns.
     *
     * @param projects the times of each project of the shop
     */
    public static LearnedRates of(List<ProjectTimes> projects) {
        List<BookedWork> works = new ArrayList<>();
        SortedMap<YearMonth, Double> months = new TreeMap<>();
        Map<String, Integer> repeats = new HashMap<>();
        projects.stream()
                .flatMap(p -> p.begun().stream())
                .sorted(Comparator.comparing(Begun::at).thenComparing(Begun::id))
                .forEach(b -> {
                    int repeat = repeats.merge(b.family(), 1, Integer::sum);
                    if (b.bookedMin() > 0 && b.estimatedMin() > 0) {
                        works.add(
                                new BookedWork(b.id(), b.kind(), b.people(), repeat, b.estimatedMin(), b.bookedMin()));
                    }
                });
        projects.forEach(p -> p.booked().months().forEach((m, h) -> months.merge(m, h, Double::sum)));
        double estimated =
                projects.stream().mapToDouble(ProjectTimes::estimatedMin).sum();
        return new LearnedRates(RatesCalculator.calculate(works, RatePrior.USUAL), estimated, months, repeats);
    }

    /**
     * Puts the learned factors on the steps that are still to do, each with its origin beside the recipe's own rates. Repeats
     * are counted on in the order given.
     *
     * @param definition the definition
     * @param steps the steps at the recipes' own rates
     */
    public List<StepResult> on(Definition definition, List<StepResult> steps) {
        Map<String, Integer> counted = new HashMap<>(repeats);
        List<StepResult> learned = new ArrayList<>();
        for (StepResult s : steps) {
            boolean open = s.work().state() == State.TODO && !s.work().hands().isEmpty();
            int repeat = open ? counted.merge(ProjectTimes.family(definition, s), 1, Integer::sum) : 1;
            double factor = open ? rates.factor(s.kind().key(), repeat) : 1;
            learned.add(Math.abs(factor - 1) < NO_CHANGE ? s : with(s, factor, repeat));
        }
        return List.copyOf(learned);
    }

    private StepResult with(StepResult s, double factor, int repeat) {
        List<CrewTime> hands = s.work().hands().stream()
                .map(h -> new CrewTime(h.people(), Math.max(ROUND_MIN, rounded(h.minutes() * factor))))
                .toList();
        WorkStep work = s.work().withHands(hands);
        int person = (int) Math.ceil(s.personMinutes() * factor - NEARLY);
        List<Figure> figures = new ArrayList<>(s.hands());
        figures.add(figure(s, person, factor, repeat));
        return new StepResult(
                s.id(),
                s.made(),
                s.make(),
                s.key(),
                s.recipe(),
                s.kind(),
                s.title(),
                s.say(),
                s.checks(),
                s.record(),
                s.cautions(),
                s.signed(),
                s.whichWay(),
                s.stage(),
                s.plies(),
                s.mixes(),
                s.batches(),
                s.bag(),
                s.needs(),
                person,
                figures,
                s.windows(),
                s.findings(),
                work);
    }

    private static int rounded(double minutes) {
        return (int) Math.ceil(minutes / ROUND_MIN - NEARLY) * ROUND_MIN;
    }

    private Figure figure(StepResult s, int person, double factor, int repeat) {
        KindRate kind = rates.kind(s.kind().key()).orElseThrow();
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input("by the recipe", s.personMinutes() + " person-minutes", Origin.COMPUTED));
        inputs.add(new Input(
                "learned factor for " + kind.kind() + ", from " + kind.works() + " finished steps",
                String.format(
                        Locale.ROOT, "%.2f (80 %% between %.2f and %.2f)", kind.factor(), kind.low(), kind.high()),
                Origin.LEARNED));
        kind.repetition()
                .ifPresent(r -> inputs.add(new Input(
                        "time number " + repeat + " of this work, each doubling leaves",
                        String.format(Locale.ROOT, "%.0f %%", 100 * r.rate()),
                        Origin.LEARNED)));
        return new Figure(
                "hands-on time at the shop's own rate",
                person + " person-minutes",
                String.format(
                        Locale.ROOT,
                        "recipe's time x %.2f, drawn in towards the recipe by how little is known",
                        factor),
                inputs,
                "[lindley-smith1972]; learning curve [wright1936]; prior: common practice, no source",
                List.of());
    }
}
