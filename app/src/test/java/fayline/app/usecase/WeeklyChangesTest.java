package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.act.ChangeLines.Add;
import fayline.app.usecase.act.ChangeLines.Change;
import fayline.app.usecase.act.ChangeLines.Put;
import fayline.app.usecase.act.ChangeLines.TakeOut;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.shop.Outcome;
import fayline.basis.finding.InputProblem;
import fayline.flow.project.Definition;
import fayline.flow.record.MemoryLog;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What changes weekly in a shop, on the demonstration: one line changes, and the definition says so. */
class WeeklyChangesTest {
    private static final String PROJECT = "ousel-1";
    private final Teasel t = Teasel.empty(new MemoryLog());
    private final ChangeLines change = new ChangeLines(t.shop);

    @BeforeEach
    void readIn() throws IOException {
        DefinitionFolder demo = DefinitionFolder.from(Teasel.root().resolve("demo/ousel"));
        assertThat(new ImportFolder(t.shop).of(demo, false).taken()).isTrue();
    }

    private String text(String path) {
        return t.shop.folder(PROJECT).text(path).orElseThrow();
    }

    private Definition definition() {
        return t.shop.readDefinition(PROJECT);
    }

    private Outcome make(String path, Change... changes) {
        return change.change(Teasel.by("runa"), PROJECT, path, List.of(changes));
    }

    /** The lines that went and the lines that came. */
    private List<String> difference(String path, Change... changes) {
        List<String> went = new ArrayList<>(text(path).lines().toList());
        Outcome o = make(path, changes);
        assertThat(o.stands()).as(o.toString()).isTrue();
        List<String> came = new ArrayList<>(text(path).lines().toList());
        List<String> before = List.copyOf(went);
        came.forEach(went::remove);
        before.forEach(came::remove);
        List<String> both = new ArrayList<>();
        went.forEach(l -> both.add("- " + l.strip()));
        came.forEach(l -> both.add("+ " + l.strip()));
        return both;
    }

    private static Map<String, String> fields(String... pairs) {
        Map<String, String> m = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            m.put(pairs[i], pairs[i + 1]);
        }
        return m;
    }

    @Test
    void should_count_on_other_hours_when_a_person_comes_later() {
        assertThat(difference(
                        "people.yaml",
                        new Put("people[tove].hours[0].from", "09:30"),
                        new Put("people[tove].hours[0].to", "15:00")))
                .containsExactly(
                        "- - {days: [mon, tue, wed, thu], from: \"08:00\", to: \"17:00\", pause: \"12:30-13:00\"}",
                        "+ - {days: [mon, tue, wed, thu], from: \"09:30\", to: \"15:00\", pause: \"12:30-13:00\"}");
        assertThat(definition().shop().people().get("tove").hours().get(0).from())
                .isEqualTo(LocalTime.of(9, 30));
    }

    @Test
    void should_miss_a_person_when_an_absence_is_added_and_no_more_when_it_is_taken_out() {
        String before = text("people.yaml");
        assertThat(difference(
                        "people.yaml",
                        new Add("people[bram].absences", fields("from", "2026-04-01", "to", "2026-04-02"))))
                .containsExactly("+ - {from: 2026-04-01, to: 2026-04-02}");
        assertThat(definition().shop().people().get("bram").absences()).hasSize(2);
        assertThat(make("people.yaml", new TakeOut("people[bram].absences[1]")).stands())
                .isTrue();
        assertThat(text("people.yaml")).isEqualTo(before);
    }

    @Test
    void should_have_a_lot_more_and_less_in_another_when_the_shelf_is_counted() {
        assertThat(difference(
                        "lots.yaml",
                        new Put("lots[L-2605].quantity", "8.4 kg"),
                        new Put("lots[L-2605].opened", "2026-03-03"),
                        new Add(
                                "lots",
                                fields("id", "L-2700", "of", "g-200", "quantity", "50 m2", "received", "2026-03-03"))))
                .containsExactly(
                        "- - {id: L-2605, of: tool-coat, component: resin, quantity: 9 kg, received: 2026-01-12, expires: 2026-09-01}",
                        "+ - {id: L-2605, of: tool-coat, component: resin, quantity: 8.4 kg, received: 2026-01-12, expires: 2026-09-01, opened: 2026-03-03}",
                        "+ - {id: L-2700, of: g-200, quantity: 50 m2, received: 2026-03-03}");
        assertThat(definition().lots().get("L-2605").opened()).contains(LocalDate.of(2026, 3, 3));
        assertThat(definition().lots().get("L-2700").of()).isEqualTo("g-200");
    }

    @Test
    void should_wait_no_longer_when_a_delivery_has_arrived() {
        assertThat(difference("deliveries.yaml", new Put("deliveries[d-belt].arrived", "2026-03-02")))
                .hasSize(2)
                .last()
                .asString()
                .contains("arrived: 2026-03-02");
        assertThat(definition().deliveries().get("d-belt").arrived()).contains(LocalDate.of(2026, 3, 2));
    }

    @Test
    void should_aim_at_another_day_when_a_milestone_moves() {
        assertThat(difference("project.yaml", new Put("project.milestones[hull-closed].due", "2026-05-08")))
                .hasSize(2);
        assertThat(definition().facts().milestones().get(1).due()).isEqualTo(LocalDate.of(2026, 5, 8));
    }

    @Test
    void should_expect_other_air_when_a_reading_and_a_forecast_day_are_entered() {
        int readings = definition().climate().readings().size();
        assertThat(difference(
                        "climate.yaml",
                        new Add(
                                "climate.readings",
                                fields("at", "2026-03-03T08:00", "probe", "hall", "air", "17.6 degC")),
                        new Put("climate.forecast[0].night", "12 degC"),
                        new Add(
                                "climate.forecast",
                                fields(
                                        "date",
                                        "2026-03-11",
                                        "day",
                                        "19 degC",
                                        "night",
                                        "15 degC",
                                        "humidity",
                                        "55 %"))))
                .hasSize(4);
        assertThat(definition().climate().readings()).hasSize(readings + 1);
        assertThat(definition().climate().forecast().get(0).night().celsius())
                .isCloseTo(12, org.assertj.core.data.Offset.offset(1e-9));
    }

    @Test
    void should_keep_nothing_and_tell_everything_when_a_change_does_not_hold_together() {
        String lots = text("lots.yaml");
        Outcome o = make(
                "lots.yaml",
                new Put("lots[L-2605].quantity", "8.4"),
                new Put("lots[L-2611].of", "g-202"),
                new Put("lots[L-2612].received", "5.1.2026"));
        assertThat(o.stands()).isFalse();
        assertThat(o.problems().stream().map(InputProblem::sentence))
                .containsExactly(
                        "lots.yaml:6: lots[4].quantity: found \"8.4\", expected a mass such as 250 g or an area such as 2.6 m2"
                                + " or a length such as 0.5 mm, not negative; add the unit: 8.4 kg?",
                        "lots.yaml:12: lots[10].of: found \"g-202\", expected a material or system that exists; did you mean"
                                + " \"g-200\"?",
                        "lots.yaml:13: lots[11].received: found \"5.1.2026\", expected a date such as 2026-03-02");
        assertThat(text("lots.yaml")).isEqualTo(lots);
        assertThat(make("people.yaml", new Put("people[zoe].name", "Zoe")).stands())
                .isFalse();
        assertThat(make("people.yaml", new Put("people[runa].hours", "all day")).sentence())
                .contains("people.yaml was not changed");
    }
}
