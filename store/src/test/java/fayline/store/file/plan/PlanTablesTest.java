package fayline.store.file.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The plan as a table and as a calendar, read back by the libraries that read such files. */
class PlanTablesTest {
    private static final Instant EIGHT = Instant.parse("2026-03-02T07:00:00Z");

    private static WorkStep step(String id, String title) {
        return new WorkStep(
                id,
                "wren",
                "fin",
                title,
                "trim",
                List.of(new WorkStep.CrewTime(1, 60)),
                Map.of(),
                "dust",
                true,
                WorkStep.Span.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                WorkStep.State.TODO,
                WorkStep.Actual.NONE);
    }

    private static Work work() {
        return new Work(
                "1",
                "hash",
                "A",
                EIGHT,
                ZoneId.of("Europe/Vienna"),
                EIGHT.plusSeconds(864_000),
                0,
                List.of(
                        new Worker("ada", "Ada, the elder", Set.of(), List.of(), List.of()),
                        new Worker("bo", "Bo", Set.of(), List.of(), List.of())),
                List.of(new Place("saw", "Saw stand", Place.Kind.STAND, "hall", true, false)),
                List.of(),
                List.of(),
                List.of(
                        step("wren/fin/1/trim", "=HYPERLINK(\"x\")"),
                        step("wren/fin/1/file", "File; then sand\nsoftly")),
                List.of());
    }

    private static Plan plan() {
        Stretch first = new Stretch(EIGHT, EIGHT.plusSeconds(1800));
        Stretch second = new Stretch(EIGHT.plusSeconds(3600), EIGHT.plusSeconds(5400));
        return new Plan(
                List.of(new PlannedStep(
                        "wren/fin/1/trim",
                        EIGHT,
                        second.to(),
                        second.to(),
                        List.of("ada"),
                        List.of("saw"),
                        List.of(first, second),
                        List.of())),
                List.of(new Plan.Unplanned("wren/fin/1/file", "-no file, no filing")),
                Optional.of(second.to()));
    }

    @Test
    void should_disarm_formulas_and_keep_every_text_when_written_as_a_table() throws IOException {
        String text = PlanCsv.write(work(), plan());
        List<CSVRecord> rows = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords();
        assertThat(rows).hasSize(2);
        CSVRecord trim = rows.get(0);
        assertThat(trim.get("title")).isEqualTo("'=HYPERLINK(\"x\")");
        assertThat(trim.get("start")).isEqualTo("2026-03-02 08:00");
        assertThat(trim.get("hands end")).isEqualTo("2026-03-02 09:30");
        assertThat(trim.get("people")).isEqualTo("Ada, the elder");
        assertThat(trim.get("places")).isEqualTo("Saw stand");
        CSVRecord file = rows.get(1);
        assertThat(file.get("title")).isEqualTo("File; then sand\nsoftly");
        assertThat(file.get("start")).isEmpty();
        assertThat(file.get("not planned because")).isEqualTo("'-no file, no filing");
    }

    @Test
    void should_never_begin_a_cell_with_a_formula_when_texts_are_random() throws IOException {
        for (int seed = 0; seed < 100; seed++) {
            SeededPlans seeded = new SeededPlans(seed);
            String text = PlanCsv.write(seeded.work(), seeded.plan());
            for (CSVRecord row : CSVFormat.RFC4180.parse(new StringReader(text)).getRecords()) {
                assertThat(row).noneMatch(cell -> !cell.isEmpty() && "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0);
            }
        }
    }

    @Test
    void should_hold_an_event_per_stretch_when_written_as_a_calendar() throws IOException, ParserException {
        String text = PlanCalendar.write(work(), plan(), Optional.of("ada"));
        assertThat(text).isEqualTo(PlanCalendar.write(work(), plan(), Optional.empty()));
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertThat(calendar.validate().hasErrors()).isFalse();
        List<VEvent> events = calendar.getComponents("VEVENT");
        assertThat(events).hasSize(2);
        assertThat(text)
                .contains("DTSTART:20260302T070000Z", "DTEND:20260302T073000Z", "DTSTART:20260302T080000Z")
                .contains("SUMMARY:=HYPERLINK(\"x\") (fin)\\, part 2 of 2")
                .contains("LOCATION:Saw stand");
        assertThat(events.get(0).getUid()).isNotEqualTo(events.get(1).getUid());
        assertThat(events.get(0).getDescription().getValue()).contains("Ada, the elder");
    }

    @Test
    void should_be_empty_when_a_person_has_no_work() {
        assertThat(PlanCalendar.write(work(), plan(), Optional.of("bo"))).doesNotContain("VEVENT");
    }
}
