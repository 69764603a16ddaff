package fayline.flow.result.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.stock.ResinSystem;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import fayline.method.cure.pot.PotLife;
import fayline.method.mix.batch.Batch;
import fayline.method.mix.batch.BatchPlan;
import fayline.method.mix.batch.BatchPlanCalculator;
import fayline.method.mix.batch.BatchPlanResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Splits the mixes of a step into batches for a crew at a temperature, by {@link BatchPlanCalculator}: each batch under the
 * container's limit and used up within the trusted share of its own life.
 */
public final class MixPlanner {
    private static final Set<String> AS_IT_GOES = Set.of("coat", "fillet");

    private final Definition definition;

    /**
     * Plans with the systems and shop rules of a definition.
     *
     * @param definition the definition
     */
    public MixPlanner(Definition definition) {
        this.definition = definition;
    }

    /** The scale list of a mix. */
    public MixList list(MixJob job) {
        ResinSystem system = definition.systems().get(job.mix().system());
        BatchPlanResult plan = BatchPlanCalculator.calculate(question(system, job));
        Optional<Batch> first = plan.batches().stream().findFirst();
        Mass none = new Mass(0);
        Mass batch = first.map(Batch::mass).orElse(none);
        // A coat or fillet is finished as it goes: only its batches, not its whole length, must fit the resin's life.
        boolean asItGoes =
                AS_IT_GOES.contains(job.mix().purpose()) && !plan.batches().isEmpty() && plan.fitsDay();
        List<Finding> findings = new ArrayList<>();
        for (Finding f : plan.findings()) {
            if (asItGoes && f.severity() == Severity.STOP) {
                continue;
            }
            findings.add(new Finding(f.severity(), system.name(), f.sentence(), f.source()));
        }
        List<Figure> figures = new ArrayList<>();
        figures.add(job.mix().figure());
        figures.addAll(plan.figures());
        return new MixList(
                system.id(),
                job.mix().purpose(),
                job.mix().toMix(),
                plan.batches().size(),
                batch,
                first.map(Batch::resin).orElse(none),
                first.map(Batch::hardener).orElse(none),
                first.map(Batch::hardenerTolerance).orElse(none),
                plan.largest().orElse(none),
                first.map(Batch::potLife).orElse(new TimeSpan(0)),
                first.map(b -> b.usableUntil().minus(b.mixAt())).orElse(new TimeSpan(0)),
                every(plan.batches()),
                shape(system) == PotShape.TRAY ? "a shallow tray" : "a clean cup",
                job.at(),
                job.people(),
                batch.times(job.mix().thickener().ratio()),
                job.mix().thickener(),
                plan.tight(),
                plan.resinLife(),
                plan.fits() || asItGoes,
                plan.batches(),
                asItGoes ? List.of() : plan.waysOut(),
                figures,
                findings);
    }

    /** How many batches some jobs take; at least one for each that mixes anything. */
    public int batches(List<MixJob> jobs) {
        int sum = 0;
        for (MixJob job : jobs) {
            if (job.mix().toMix().kilograms() > 0) {
                ResinSystem system = definition.systems().get(job.mix().system());
                int n = BatchPlanCalculator.calculate(question(system, job))
                        .batches()
                        .size();
                sum += Math.max(n, 1);
            }
        }
        return sum;
    }

    private BatchPlan question(ResinSystem system, MixJob job) {
        Shop shop = definition.shop();
        PotLife pot = new PotLife(
                system.cure(),
                Optional.empty(),
                job.at(),
                shape(system),
                job.mix().thickener().ratio() > 0,
                OptionalDouble.empty());
        return new BatchPlan(
                system.name(),
                pot,
                system.partsResin(),
                system.partsHardener(),
                system.ratioTolerance(),
                job.mix().toMix(),
                system.useRateKgPerS(),
                new BatchPlan.Crew(job.people(), job.useful(), job.factorWithOneMore()),
                shop.lifeTrusted(),
                shop.mixing(),
                Optional.of(system.largestPot()),
                Optional.of(job.hands()).filter(h -> h.seconds() > 0),
                job.bagging(),
                job.dayLeft(),
                job.wholeDay(),
                job.prices());
    }

    /** The container that the data sheet speaks of; a cup where it speaks of both or of none. */
    private static PotShape shape(ResinSystem system) {
        List<SheetPoint> lives = system.cure().points().stream()
                .filter(p -> p.state() == CureState.POT_LIFE)
                .toList();
        boolean trays = !lives.isEmpty() && lives.stream().allMatch(p -> p.shape() == PotShape.TRAY);
        return trays ? PotShape.TRAY : PotShape.CUP;
    }

    private static TimeSpan every(List<Batch> batches) {
        return batches.size() < 2
                ? new TimeSpan(0)
                : batches.get(1).mixAt().minus(batches.get(0).mixAt());
    }
}
