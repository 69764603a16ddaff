package fayline.store.file.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Builds the JSON tree of a plan file. */
final class PlanWriting {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Work work;

    PlanWriting(Work work) {
        this.work = work;
    }

    ObjectNode write(Plan plan) {
        ObjectNode root = NODES.objectNode();
        root.put("version", work.version());
        root.put("definition", work.definition());
        root.put("revision", work.revision());
        root.set("work", work());
        root.set("plan", plan(plan));
        return root;
    }

    private ObjectNode work() {
        ObjectNode node = NODES.objectNode();
        node.put("now", time(work.now()));
        node.put("zone", work.zone().getId());
        node.put("horizon", time(work.horizon()));
        node.put("dust-settles-min", work.dustSettlesMin());
        node.set("people", list(work.people(), this::worker));
        node.set("places", list(work.places(), PlanWriting::place));
        node.set("clocks", list(work.clocks(), this::clock));
        node.set(
                "deliveries",
                list(
                        work.deliveries(),
                        d -> NODES.objectNode()
                                .put("id", d.id())
                                .put("what", d.what())
                                .put("expected", time(d.expected()))));
        node.set("steps", list(work.steps(), this::step));
        node.set("holds", list(work.holds(), PlanWriting::hold));
        if (!work.wishes().isEmpty()) {
            node.set("wishes", list(work.wishes(), this::wish));
        }
        HandsAndSets.write(work, node);
        return node;
    }

    private ObjectNode worker(Worker worker) {
        ObjectNode node = NODES.objectNode();
        node.put("id", worker.id());
        node.put("name", worker.name());
        node.set("skills", texts(new TreeSet<>(worker.skills())));
        node.set("present", list(worker.present(), this::stretch));
        node.set("breaks", list(worker.breaks(), this::stretch));
        return node;
    }

    private static ObjectNode place(Place place) {
        return NODES.objectNode()
                .put("id", place.id())
                .put("name", place.name())
                .put("kind", word(place.kind()))
                .put("room", place.room())
                .put("dust", place.dust())
                .put("wet", place.wet());
    }

    private ObjectNode clock(CureClock clock) {
        ObjectNode node = NODES.objectNode();
        node.put("id", clock.id());
        node.put("from", time(clock.from()));
        node.put("step-min", clock.stepMin());
        ArrayNode rates = node.putArray("rates");
        clock.rates().forEach(r -> rates.add(finite(r)));
        return node;
    }

    private ObjectNode step(WorkStep step) {
        ObjectNode node = NODES.objectNode();
        node.put("id", step.id());
        node.put("project", step.project());
        node.put("made", step.made());
        node.put("title", step.title());
        node.put("kind", step.kind());
        node.set(
                "hands",
                list(
                        step.hands(),
                        h -> NODES.objectNode().put("people", h.people()).put("minutes", h.minutes())));
        ObjectNode skills = node.putObject("skills");
        new TreeMap<>(step.skills()).forEach(skills::put);
        node.put("air", step.air());
        node.put("interruptible", step.interruptible());
        node.set("alone", span(step.alone()));
        node.set("after", list(step.after(), PlanWriting::link));
        put(node, "not-before", step.notBefore());
        node.set("awaits", texts(step.awaits()));
        ArrayNode watches = node.putArray("watch-min");
        step.watchMin().forEach(watches::add);
        node.put("accompanied", step.accompanied());
        node.put("state", word(step.state()));
        ObjectNode actual = node.putObject("actual");
        put(actual, "started", step.actual().started());
        put(actual, "hands-ended", step.actual().handsEnded());
        put(actual, "ended", step.actual().ended());
        actual.set("people", texts(step.actual().people()));
        actual.set("places", texts(step.actual().places()));
        return node;
    }

    private static ObjectNode link(WorkStep.Link link) {
        ObjectNode node = NODES.objectNode();
        node.put("step", link.step());
        node.put("from", link.from());
        node.set("opens", span(link.opens()));
        link.shuts().ifPresent(s -> node.set("shuts", span(s)));
        link.miss()
                .ifPresent(m -> node.putObject("miss").put("does", m.does()).put("person-minutes", m.personMinutes()));
        return node;
    }

    private static ObjectNode span(WorkStep.Span span) {
        ObjectNode node = NODES.objectNode();
        node.put("minutes", finite(span.minutes()));
        if (!span.clock().isEmpty()) {
            node.put("clock", span.clock());
        }
        return node;
    }

    private static ObjectNode hold(Hold hold) {
        ObjectNode node = NODES.objectNode();
        node.put("id", hold.id());
        node.put("kind", word(hold.kind()));
        node.set("candidates", texts(hold.candidates()));
        node.put("count", hold.count());
        node.set("steps", texts(hold.steps()));
        return node;
    }

    private ObjectNode wish(WorkWish wish) {
        ObjectNode node = NODES.objectNode();
        node.put("id", wish.id());
        node.put("step", wish.step());
        node.put("kind", word(wish.kind()));
        putText(node, "on", wish.on());
        put(node, "from", wish.from());
        put(node, "before", wish.before());
        putText(node, "by", wish.by());
        putText(node, "why", wish.why());
        return node;
    }

    private static void putText(ObjectNode node, String key, String text) {
        if (!text.isEmpty()) {
            node.put(key, text);
        }
    }

    private ObjectNode plan(Plan plan) {
        ObjectNode node = NODES.objectNode();
        node.set("steps", list(plan.steps(), this::planned));
        node.set(
                "unplanned",
                list(
                        plan.unplanned(),
                        u -> NODES.objectNode().put("step", u.step()).put("reason", u.reason())));
        put(node, "finish", plan.finish());
        return node;
    }

    private ObjectNode planned(PlannedStep planned) {
        ObjectNode node = NODES.objectNode();
        node.put("step", planned.step());
        node.put("start", time(planned.start()));
        node.put("hands-end", time(planned.handsEnd()));
        node.put("end", time(planned.end()));
        node.set("people", texts(planned.people()));
        node.set("places", texts(planned.places()));
        node.set("stretches", list(planned.stretches(), this::stretch));
        node.set("missed", texts(planned.missed()));
        return node;
    }

    private ObjectNode stretch(Stretch stretch) {
        return NODES.objectNode().put("from", time(stretch.from())).put("to", time(stretch.to()));
    }

    private void put(ObjectNode node, String key, Optional<Instant> moment) {
        moment.ifPresent(m -> node.put(key, time(m)));
    }

    private String time(Instant moment) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                moment.atZone(work.zone()).toOffsetDateTime());
    }

    private static double finite(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("a plan holds the number " + number + ", which JSON cannot say");
        }
        return number;
    }

    private static <T> ArrayNode list(List<T> things, Function<T, ObjectNode> node) {
        ArrayNode array = NODES.arrayNode();
        things.forEach(t -> array.add(node.apply(t)));
        return array;
    }

    private static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = NODES.arrayNode();
        texts.forEach(array::add);
        return array;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
