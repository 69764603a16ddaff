package fayline.store.file.plan;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import java.util.List;
import java.util.Set;

/** Reads the JSON tree of a plan file. */
final class PlanReading {
    private static final List<String> AIRS = List.of("wet", "dust", "quiet");
    private static final List<String> MOMENTS = List.of("start", "hands-end", "end");

    private PlanReading() {}

    static PlanRead.WorkAndPlan read(JsonAt root) {
        String version = root.text("version");
        String definition = root.text("definition");
        String revision = root.text("revision");
        Work work = work(version, definition, revision, root.object("work"));
        Plan plan = plan(root.object("plan"));
        root.noOthers();
        return new PlanRead.WorkAndPlan(work, plan);
    }

    private static Work work(String version, String definition, String revision, JsonAt at) {
        Work work = new Work(
                version,
                definition,
                revision,
                at.time("now"),
                at.zone("zone"),
                at.time("horizon"),
                at.whole("dust-settles-min"),
                at.list("people", PlanReading::worker),
                at.list("places", PlanReading::place),
                at.list("clocks", PlanReading::clock),
                at.list("deliveries", PlanReading::delivery),
                at.list("steps", PlanReading::step),
                at.list("holds", PlanReading::hold),
                at.optionalList("wishes", PlanReading::wish),
                HandsAndSets.hands(at),
                HandsAndSets.sets(at));
        at.noOthers();
        return work;
    }

    private static Worker worker(JsonAt at) {
        Worker worker = new Worker(
                at.text("id"),
                at.text("name"),
                Set.copyOf(at.texts("skills")),
                at.list("present", PlanReading::stretch),
                at.list("breaks", PlanReading::stretch));
        at.noOthers();
        return worker;
    }

    private static Worker.Stretch stretch(JsonAt at) {
        Worker.Stretch stretch = new Worker.Stretch(at.time("from"), at.time("to"));
        at.noOthers();
        return stretch;
    }

    private static Place place(JsonAt at) {
        Place place = new Place(
                at.text("id"),
                at.text("name"),
                at.word("kind", Place.Kind.values()),
                at.text("room"),
                at.flag("dust"),
                at.flag("wet"));
        at.noOthers();
        return place;
    }

    private static CureClock clock(JsonAt at) {
        CureClock clock = new CureClock(at.text("id"), at.time("from"), at.whole("step-min"), at.numbers("rates"));
        at.noOthers();
        return clock;
    }

    private static Work.Awaited delivery(JsonAt at) {
        Work.Awaited delivery = new Work.Awaited(at.text("id"), at.text("what"), at.time("expected"));
        at.noOthers();
        return delivery;
    }

    private static WorkStep step(JsonAt at) {
        WorkStep step = new WorkStep(
                at.text("id"),
                at.text("project"),
                at.text("made"),
                at.text("title"),
                at.text("kind"),
                at.list("hands", PlanReading::crewTime),
                at.counts("skills"),
                at.word("air", AIRS),
                at.flag("interruptible"),
                span(at.object("alone")),
                at.list("after", PlanReading::link),
                at.optionalTime("not-before"),
                at.texts("awaits"),
                at.wholes("watch-min"),
                at.flag("accompanied"),
                at.word("state", WorkStep.State.values()),
                actual(at.object("actual")));
        at.noOthers();
        return step;
    }

    private static WorkStep.CrewTime crewTime(JsonAt at) {
        WorkStep.CrewTime time = new WorkStep.CrewTime(at.whole("people"), at.whole("minutes"));
        at.noOthers();
        return time;
    }

    private static WorkStep.Span span(JsonAt at) {
        WorkStep.Span span =
                new WorkStep.Span(at.number("minutes"), at.optionalText("clock").orElse(""));
        at.noOthers();
        return span;
    }

    private static WorkStep.Link link(JsonAt at) {
        WorkStep.Link link = new WorkStep.Link(
                at.text("step"),
                at.word("from", MOMENTS),
                span(at.object("opens")),
                at.optionalObject("shuts").map(PlanReading::span),
                at.optionalObject("miss").map(PlanReading::miss));
        at.noOthers();
        return link;
    }

    private static WorkStep.Miss miss(JsonAt at) {
        WorkStep.Miss miss = new WorkStep.Miss(at.text("does"), at.whole("person-minutes"));
        at.noOthers();
        return miss;
    }

    private static WorkStep.Actual actual(JsonAt at) {
        WorkStep.Actual actual = new WorkStep.Actual(
                at.optionalTime("started"),
                at.optionalTime("hands-ended"),
                at.optionalTime("ended"),
                at.texts("people"),
                at.texts("places"));
        at.noOthers();
        return actual;
    }

    private static Hold hold(JsonAt at) {
        Hold hold = new Hold(
                at.text("id"),
                at.word("kind", Place.Kind.values()),
                at.texts("candidates"),
                at.whole("count"),
                at.texts("steps"));
        at.noOthers();
        return hold;
    }

    private static WorkWish wish(JsonAt at) {
        WorkWish wish = new WorkWish(
                at.text("id"),
                at.text("step"),
                at.word("kind", WorkWish.Kind.values()),
                at.optionalText("on").orElse(""),
                at.optionalTime("from"),
                at.optionalTime("before"),
                at.optionalText("by").orElse(""),
                at.optionalText("why").orElse(""));
        at.noOthers();
        return wish;
    }

    private static Plan plan(JsonAt at) {
        Plan plan = new Plan(
                at.list("steps", PlanReading::planned),
                at.list("unplanned", PlanReading::unplanned),
                at.optionalTime("finish"));
        at.noOthers();
        return plan;
    }

    private static Plan.PlannedStep planned(JsonAt at) {
        Plan.PlannedStep planned = new Plan.PlannedStep(
                at.text("step"),
                at.time("start"),
                at.time("hands-end"),
                at.time("end"),
                at.texts("people"),
                at.texts("places"),
                at.list("stretches", PlanReading::stretch),
                at.texts("missed"));
        at.noOthers();
        return planned;
    }

    private static Plan.Unplanned unplanned(JsonAt at) {
        Plan.Unplanned unplanned = new Plan.Unplanned(at.text("step"), at.text("reason"));
        at.noOthers();
        return unplanned;
    }
}
