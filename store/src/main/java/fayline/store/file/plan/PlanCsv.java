package fayline.store.file.plan;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.store.file.table.CsvText;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Writes a plan as a table: a row per planned step in the order of their starts, then a row per unplanned one with its reason.
 */
public final class PlanCsv {
    private static final List<String> HEADER = List.of(
            "project",
            "part or joint",
            "step",
            "title",
            "kind",
            "state",
            "start",
            "hands end",
            "end",
            "people",
            "places",
            "missed windows after",
            "not planned because");
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private PlanCsv() {}

    /** The table, RFC 4180, with a heading; times on the shop's wall. */
    public static String write(Work work, Plan plan) {
        Map<String, WorkStep> steps =
                work.steps().stream().collect(Collectors.toMap(WorkStep::id, Function.identity(), (a, b) -> a));
        Map<String, String> people = names(work.people(), p -> p.id(), p -> p.name());
        Map<String, String> places = names(work.places(), p -> p.id(), p -> p.name());
        List<List<String>> rows = new ArrayList<>();
        for (PlannedStep planned : plan.steps().stream()
                .sorted(Comparator.comparing(PlannedStep::start).thenComparing(PlannedStep::step))
                .toList()) {
            List<String> row = new ArrayList<>(about(planned.step(), steps));
            row.add(time(work, planned.start()));
            row.add(time(work, planned.handsEnd()));
            row.add(time(work, planned.end()));
            row.add(joined(planned.people(), people));
            row.add(joined(planned.places(), places));
            row.add(String.join("; ", planned.missed()));
            row.add("");
            rows.add(row);
        }
        for (Plan.Unplanned unplanned : plan.unplanned()) {
            List<String> row = new ArrayList<>(about(unplanned.step(), steps));
            row.addAll(List.of("", "", "", "", "", "", unplanned.reason()));
            rows.add(row);
        }
        return CsvText.of(HEADER, rows);
    }

    private static List<String> about(String id, Map<String, WorkStep> steps) {
        WorkStep step = steps.get(id);
        return step == null
                ? List.of("", "", id, "", "", "")
                : List.of(
                        step.project(),
                        step.made(),
                        id,
                        step.title(),
                        step.kind(),
                        step.state().name().toLowerCase(Locale.ROOT));
    }

    private static String time(Work work, Instant moment) {
        return LOCAL.format(moment.atZone(work.zone()));
    }

    private static String joined(List<String> ids, Map<String, String> names) {
        return ids.stream().map(id -> names.getOrDefault(id, id)).collect(Collectors.joining("; "));
    }

    private static <T> Map<String, String> names(List<T> things, Function<T, String> id, Function<T, String> name) {
        return things.stream().collect(Collectors.toMap(id, name, (a, b) -> a));
    }
}
