package fayline.flow.card;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.flow.card.Card.BagLine;
import fayline.flow.card.Card.FetchLine;
import fayline.flow.card.Card.Heading;
import fayline.flow.card.Card.MixLine;
import fayline.flow.card.Card.PlyLine;
import fayline.flow.card.Card.WhichWay;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.expand.Names;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.quantity.BagStack;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PlyCut;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.StoresResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes cards: what was defined, computed and planned for a step, told whole. */
public final class CardMaker {
    private CardMaker() {}

    /**
     * Makes the card of a step. Batches are those for the people and the temperature of the plan; where the step is not planned,
     * for the least crew at the warmest day that is expected.
     *
     * @param definition the definition
     * @param result what follows from it
     * @param plan who, where, when; may be of several projects
     * @param stepId the step, {@code project/made/make-number/key}
     * @throws IllegalArgumentException if the project has no such step
     */
    public static Card make(Definition definition, ProjectResult result, Plan plan, String stepId) {
        StepResult step =
                result.step(stepId).orElseThrow(() -> new IllegalArgumentException("no such step: " + stepId));
        Names names = new Names(definition);
        Made made = names.made(step.made())
                .orElseThrow(() -> new IllegalArgumentException("no such part or joint: " + step.made()));
        Optional<PlannedStep> planned =
                plan.steps().stream().filter(p -> p.step().equals(stepId)).findFirst();
        CardTiming timing = new CardTiming(definition, result, plan, step, planned);
        List<MixList> lists = timing.mixes();
        List<Finding> findings = new ArrayList<>(timing.findings());
        lists.forEach(l -> findings.addAll(l.findings()));
        List<Figure> figures = new ArrayList<>();
        lists.forEach(l -> figures.addAll(l.figures()));
        figures.addAll(step.hands());
        step.bag().ifPresent(b -> figures.addAll(b.figures()));
        return new Card(
                stepId,
                heading(definition, made),
                step.kind(),
                step.title(),
                step.whichWay() ? Optional.of(whichWay(made)) : Optional.empty(),
                timing.when(names),
                plies(step, made, names),
                lists.stream()
                        .map(l -> new MixLine(names.of(l.system()), l, lots(result, l.system())))
                        .toList(),
                step.bag().map(b -> bag(b, names)).orElse(List.of()),
                step.needs().stream().map(n -> fetch(n, result, names)).toList(),
                step.say(),
                timing.checks(),
                timing.readings(),
                step.signed(),
                new CardWindows(result, plan).lines(step),
                clocks(result, step),
                step.cautions().stream().map(Cautions::get).toList(),
                lessons(definition, made),
                findings.stream().distinct().toList(),
                figures);
    }

    private static List<ClockRunning> clocks(ProjectResult result, StepResult step) {
        return result.clocks().stream()
                .filter(c -> c.step().equals(step.id())
                        || step.work().after().stream().anyMatch(l -> l.step().equals(c.step())))
                .toList();
    }

    private static Heading heading(Definition definition, Made made) {
        Optional<Part> part = made instanceof Part p ? Optional.of(p) : Optional.empty();
        return new Heading(
                definition.facts().id(),
                definition.facts().name() + ", serial " + definition.facts().serial(),
                definition.facts().design(),
                definition.facts().revision(),
                definition.hash(),
                made.id(),
                made.name(),
                part.map(Part::hand).orElse(Hand.NONE),
                part.flatMap(Part::opposite)
                        .flatMap(o -> definition.parts().find(o))
                        .map(Part::name)
                        .orElse(""),
                part.map(Part::drawing).orElse(""));
    }

    private static WhichWay whichWay(Made made) {
        if (!(made instanceof Part part)) {
            return new WhichWay("", "Point at each mark and say which part meets which, and which face is up.");
        }
        String hand = part.hand() == Hand.NONE
                ? "Say which end and which face is which"
                : "This is the " + part.hand().key() + " hand, not the "
                        + part.hand().opposite().key() + ". Say which end and which face is which";
        return new WhichWay(
                part.orient(), hand + ", hold the first piece in place dry, and have a second person agree.");
    }

    private static List<PlyLine> plies(StepResult step, Made made, Names names) {
        List<PlyLine> lines = new ArrayList<>();
        for (PlyCut ply : step.plies()) {
            String zone = made instanceof Part p
                    ? p.zones().stream()
                            .filter(z -> z.id().equals(ply.zone()))
                            .map(z -> z.name())
                            .findFirst()
                            .orElse(ply.zone())
                    : ply.zone();
            lines.add(
                    new PlyLine(lines.size() + 1, zone, names.of(ply.material()), ply.angle(), ply.core(), ply.area()));
        }
        return lines;
    }

    private static List<BagLine> bag(BagStack bag, Names names) {
        List<BagLine> lines = new ArrayList<>();
        for (BagStack.Layer layer : bag.layers()) {
            lines.add(new BagLine(
                    lines.size() + 1,
                    layer.what(),
                    layer.material().map(names::of).orElse(""),
                    layer.area(),
                    layer.margin()));
        }
        lines.add(new BagLine(
                lines.size() + 1,
                "sealant tape, " + bag.pleats() + " pleats",
                bag.tapeMaterial().map(names::of).orElse(""),
                bag.tape(),
                bag.pleatHeight()));
        return lines;
    }

    private static FetchLine fetch(Need need, ProjectResult result, Names names) {
        return new FetchLine(names.of(need.of()), need.amount(), need.purpose(), lots(result, need.of()));
    }

    private static List<String> lots(ProjectResult result, String of) {
        List<String> lots = new ArrayList<>();
        for (StoresResult.Item item : result.stores().items()) {
            if (item.of().equals(of)) {
                String part = item.component().isEmpty() ? "" : item.component() + " ";
                item.lots().stream().limit(1).map(l -> part + l).forEach(lots::add);
            }
        }
        return lots;
    }

    private static List<String> lessons(Definition definition, Made made) {
        if (!(made instanceof Part part)) {
            return List.of();
        }
        List<String> lessons = new ArrayList<>(part.lessons());
        part.opposite()
                .flatMap(o -> definition.parts().find(o))
                .ifPresent(o -> o.lessons().forEach(l -> lessons.add("From " + o.name() + ": " + l)));
        return lessons.stream().distinct().toList();
    }
}
