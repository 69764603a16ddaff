package fayline.flow.card;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.expand.Names;
import fayline.flow.result.expand.PlannedMixes;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What depends on when a step is done: the people, the air and so the batches, and what the air must be. */
final class CardTiming {
    /** Kept warmer than this a stand is a box in which nobody works. */
    private static final double WARM_BOX_K = 10;

    private final Definition definition;
    private final ProjectResult result;
    private final Plan plan;
    private final StepResult step;
    private final Optional<PlannedStep> planned;
    private final QuantityFormat format;

    CardTiming(Definition definition, ProjectResult result, Plan plan, StepResult step, Optional<PlannedStep> planned) {
        this.definition = definition;
        this.result = result;
        this.plan = plan;
        this.step = step;
        this.planned = planned;
        this.format = new QuantityFormat(definition.facts().units());
    }

    /** The batches for the crew and the air of the plan. */
    List<MixList> mixes() {
        if (planned.isEmpty() || step.mixes().isEmpty()) {
            return step.batches();
        }
        PlannedStep p = planned.get();
        int least =
                step.work().hands().isEmpty() ? 1 : step.work().hands().get(0).people();
        int people = p.people().isEmpty() ? least : p.people().size();
        return new PlannedMixes(definition).lists(step, warmestAtWork(p), people, dayLeft(p));
    }

    /** Warmest air in which hands work, and so pots stand. */
    private Temperature warmestAtWork(PlannedStep p) {
        ShopAir air = result.air();
        Temperature warmest = air.warmest(p.start());
        for (Instant at = p.start(); at.isBefore(p.handsEnd()); at = at.plus(Duration.ofMinutes(30))) {
            Temperature t = air.warmest(at);
            warmest = t.compareTo(warmest) > 0 ? t : warmest;
        }
        double stand = standsK(p).stream()
                .mapToDouble(w -> w)
                .filter(w -> w <= WARM_BOX_K)
                .max()
                .orElse(0);
        return Temperature.ofKelvins(warmest.kelvins() + stand);
    }

    private List<Double> standsK(PlannedStep p) {
        return p.places().stream()
                .flatMap(id -> definition.shop().stands().find(id).stream())
                .map(s -> s.warmer().kelvins())
                .toList();
    }

    /** How long the whole crew is in the shop from the start on. */
    private Optional<TimeSpan> dayLeft(PlannedStep p) {
        Optional<Instant> first = Optional.empty();
        for (String person : p.people()) {
            Optional<Instant> leaves = result.work().people().stream()
                    .filter(w -> w.id().equals(person))
                    .flatMap(w -> w.present().stream())
                    .filter(s -> !p.start().isBefore(s.from()) && p.start().isBefore(s.to()))
                    .map(Worker.Stretch::to)
                    .findFirst();
            if (leaves.isPresent() && (first.isEmpty() || leaves.get().isBefore(first.get()))) {
                first = leaves;
            }
        }
        return first.map(
                f -> TimeSpan.ofSeconds((double) Duration.between(p.start(), f).toSeconds()));
    }

    Card.When when(Names names) {
        WorkStep work = step.work();
        String unplanned = plan.unplanned().stream()
                .filter(u -> u.step().equals(step.id()))
                .map(Plan.Unplanned::reason)
                .findFirst()
                .orElse(planned.isPresent() ? "" : "The plan does not hold this step.");
        return new Card.When(
                work.state(),
                planned.map(PlannedStep::start).or(work.actual()::started),
                planned.map(PlannedStep::handsEnd).or(work.actual()::handsEnded),
                planned.map(PlannedStep::end).or(work.actual()::ended),
                planned.map(PlannedStep::people).orElse(work.actual().people()).stream()
                        .map(names::person)
                        .toList(),
                crew(work),
                planned.map(PlannedStep::places).orElse(work.actual().places()).stream()
                        .map(names::of)
                        .toList(),
                planned.map(p -> work.watchMin().stream()
                                .map(m -> p.handsEnd().plusSeconds(m * 60L))
                                .toList())
                        .orElse(List.of()),
                definition.shop().zone(),
                unplanned);
    }

    private String crew(WorkStep work) {
        if (work.hands().isEmpty()) {
            return "Nobody: it cures by itself.";
        }
        int least = work.hands().get(0).people();
        int useful = work.hands().get(work.hands().size() - 1).people();
        StringBuilder text = new StringBuilder(least == useful ? Integer.toString(least) : least + " to " + useful);
        text.append(useful == 1 ? " person" : " people");
        new java.util.TreeMap<>(work.skills())
                .forEach((skill, n) ->
                        text.append(", ").append(n).append(" who can ").append(skill));
        text.append(work.accompanied() ? "; never alone in the shop." : ".");
        return text.toString();
    }

    /** The recipe's checks, and before wet work what the air must be. */
    List<String> checks() {
        List<String> checks = new ArrayList<>();
        if (isWet()) {
            Shop.Limits limits = definition.shop().limits();
            checks.add("Before the first cup: air " + format.temperature(coldestAllowed()) + " or warmer, humidity "
                    + format.percent(dampestAllowed()) + " or less, coldest surface "
                    + format.difference(limits.dewMargin()) + " or more above the dew point.");
        }
        checks.addAll(step.checks());
        return checks;
    }

    /** What the recipe has written down, and with wet work the air and the lots. */
    List<String> readings() {
        List<String> readings = new ArrayList<>(step.record());
        boolean air = readings.stream()
                .anyMatch(r -> r.toLowerCase(java.util.Locale.ROOT).contains("humidity"));
        if (isWet() && !air) {
            readings.add("Air, humidity and coldest surface, with the time.");
        }
        boolean lots = readings.stream()
                .anyMatch(r -> r.toLowerCase(java.util.Locale.ROOT).contains("lot"));
        if (!step.mixes().isEmpty() && !lots) {
            readings.add("Lot of both parts and both weights of each batch.");
        }
        return readings;
    }

    private boolean isWet() {
        return step.work().air().equals("wet");
    }

    private Temperature coldestAllowed() {
        return step.mixes().stream()
                .flatMap(m -> definition.systems().find(m.system()).flatMap(ResinSystem::coldest).stream())
                .reduce(definition.shop().limits().coldest(), (a, b) -> a.compareTo(b) > 0 ? a : b);
    }

    private Fraction dampestAllowed() {
        return step.mixes().stream()
                .flatMap(m -> definition.systems().find(m.system()).flatMap(ResinSystem::dampest).stream())
                .reduce(definition.shop().limits().dampest(), (a, b) -> a.compareTo(b) < 0 ? a : b);
    }

    /** What the plan and the expected air say about this step. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        planned.ifPresent(p -> {
            for (String missed : p.missed()) {
                step.work().after().stream()
                        .filter(l -> l.step().equals(missed))
                        .flatMap(l -> l.miss().stream())
                        .forEach(m -> findings.add(new Finding(
                                Severity.CAUTION,
                                step.local(),
                                "Its window after " + missed + " is missed: " + m.does() + " " + m.personMinutes()
                                        + " person-minutes more.",
                                "the definition")));
            }
            if (isWet() && step.work().state() == WorkStep.State.TODO) {
                findings.addAll(air(p));
            }
        });
        // Batches of before the plan stand on no card: those of the plan speak for themselves.
        step.findings().stream()
                .filter(f -> step.batches().stream()
                        .noneMatch(b ->
                                b.findings().stream().anyMatch(g -> g.sentence().equals(f.sentence()))
                                        || f.sentence().startsWith("Way out")))
                .forEach(findings::add);
        return findings;
    }

    private List<Finding> air(PlannedStep p) {
        List<Finding> findings = new ArrayList<>();
        double stand = standsK(p).stream().mapToDouble(w -> w).min().orElse(0);
        Temperature limit = coldestAllowed();
        Temperature start =
                Temperature.ofKelvins(result.air().coldest(p.start()).kelvins() + stand);
        if (start.compareTo(limit) < 0) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    step.local(),
                    "The shop is expected at " + format.temperature(start) + ", the limit is "
                            + format.temperature(limit) + ": warm the stand first, or take another day.",
                    "the definition"));
            return findings;
        }
        Temperature coldest = start;
        for (Instant at = p.start(); at.isBefore(p.end()); at = at.plus(Duration.ofHours(1))) {
            Temperature t = Temperature.ofKelvins(result.air().coldest(at).kelvins() + stand);
            coldest = t.compareTo(coldest) < 0 ? t : coldest;
        }
        if (coldest.compareTo(limit) < 0) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    step.local(),
                    "It falls to " + format.temperature(coldest) + " before the cure is over, the limit is "
                            + format.temperature(limit)
                            + ": the cure is slower, which the plan counts; keep the stand warm and the bag on.",
                    "the definition"));
        }
        return findings;
    }
}
