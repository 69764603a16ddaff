package fayline.store.file.plan;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker.Stretch;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Writes the hands-on work of a plan as a calendar (RFC 5545): one event per stretch in which hands work, times in UTC. The
 * same plan gives the same text: stamps are the moment from which was planned, ids follow from step and stretch, so that a
 * calendar that has read an earlier plan moves its events instead of adding more.
 */
public final class PlanCalendar {
    private PlanCalendar() {}

    /**
     * The calendar.
     *
     * @param person whose work; everyone's where it is empty
     */
    public static String write(Work work, Plan plan, Optional<String> person) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Fayline//Plan//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        Map<String, WorkStep> steps =
                work.steps().stream().collect(Collectors.toMap(WorkStep::id, Function.identity(), (a, b) -> a));
        List<PlannedStep> planned = plan.steps().stream()
                .filter(p -> person.isEmpty() || p.people().contains(person.get()))
                .sorted(Comparator.comparing(PlannedStep::start).thenComparing(PlannedStep::step))
                .toList();
        for (PlannedStep step : planned) {
            for (int i = 0; i < step.stretches().size(); i++) {
                calendar.add(event(work, step, i, Optional.ofNullable(steps.get(step.step()))));
            }
        }
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter(false).output(calendar, text);
        } catch (IOException e) {
            throw new IllegalStateException("a plan could not be written as a calendar", e);
        }
        return text.toString();
    }

    private static VEvent event(Work work, PlannedStep planned, int index, Optional<WorkStep> step) {
        Stretch stretch = planned.stretches().get(index);
        int of = planned.stretches().size();
        String title = step.map(WorkStep::title).orElse(planned.step());
        String made = step.map(s -> " (" + s.made() + ")").orElse("");
        String part = of > 1 ? ", part " + (index + 1) + " of " + of : "";
        VEvent event = new VEvent(new PropertyList());
        event.add(new Uid(UUID.nameUUIDFromBytes((planned.step() + "#" + index).getBytes(StandardCharsets.UTF_8))
                .toString()));
        event.add(new DtStamp(work.now()));
        event.add(new DtStart<>(stretch.from()));
        event.add(new DtEnd<>(stretch.to()));
        event.add(new Summary(title + made + part));
        event.add(new Description("Step " + planned.step() + "\nWith " + people(work, planned)));
        if (!planned.places().isEmpty()) {
            event.add(new Location(places(work, planned)));
        }
        return event;
    }

    private static String people(Work work, PlannedStep planned) {
        return planned.people().stream()
                .map(id -> work.people().stream()
                        .filter(w -> w.id().equals(id))
                        .map(w -> w.name())
                        .findFirst()
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }

    private static String places(Work work, PlannedStep planned) {
        return planned.places().stream()
                .map(id -> work.places().stream()
                        .filter(p -> p.id().equals(id))
                        .map(p -> p.name())
                        .findFirst()
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }
}
