package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.act.ChangeLines.Add;
import fayline.app.usecase.act.ChangeLines.Change;
import fayline.app.usecase.act.ChangeLines.Put;
import fayline.app.usecase.act.ChangeLines.TakeOut;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Forms over the record. */
class ChangeLinesTest {
    private final Teasel t = Teasel.readIn();
    private final ChangeLines change = new ChangeLines(t.shop);

    private String text(String path) {
        return t.shop.folder(Teasel.PROJECT).text(path).orElseThrow();
    }

    @Test
    void should_change_only_its_line_when_a_delivery_slips() {
        String before = text("deliveries.yaml");
        Outcome o = change.change(
                Teasel.by("ada"),
                Teasel.PROJECT,
                "deliveries.yaml",
                List.of(new Put("deliveries[d-paste].latest", "2026-03-20")));

        assertThat(o.stands()).isTrue();
        assertThat(text("deliveries.yaml")).isEqualTo(before.replace("latest: 2026-03-10", "latest: 2026-03-20"));
        assertThat(t.shop.readDefinition(Teasel.PROJECT)
                        .deliveries()
                        .get("d-paste")
                        .planned())
                .isEqualTo(LocalDate.parse("2026-03-20"));
    }

    @Test
    void should_plan_without_a_person_when_an_absence_is_added_and_with_again_when_it_is_taken_out() {
        String before = text("people.yaml");
        Map<String, String> away = new LinkedHashMap<>();
        away.put("from", "2026-03-10");
        away.put("to", "2026-03-12");
        away.put("why", "course: first aid");
        assertThat(change.change(
                                Teasel.by("ada"),
                                Teasel.PROJECT,
                                "people.yaml",
                                List.of(new Add("people[bo].absences", away)))
                        .stands())
                .isTrue();
        assertThat(t.shop.readDefinition(Teasel.PROJECT)
                        .shop()
                        .people()
                        .get("bo")
                        .absences())
                .singleElement()
                .satisfies(a -> assertThat(a.why()).isEqualTo("course: first aid"));
        assertThat(change.change(
                                Teasel.by("ada"),
                                Teasel.PROJECT,
                                "people.yaml",
                                List.of(new TakeOut("people[bo].absences")))
                        .stands())
                .isTrue();
        assertThat(text("people.yaml")).isEqualTo(before);
    }

    @Test
    void should_make_one_entry_when_the_same_changes_are_sent_twice_and_refuse_others_under_that_id() {
        List<Change> away = List.of(new Add("people[bo].absences", Map.of("from", "2026-03-10")));
        Sent sent = Teasel.by("ada");
        Map<String, String> days = new LinkedHashMap<>();
        days.put("from", "2026-03-10");
        days.put("to", "2026-03-12");
        List<Change> gone = List.of(new Add("people[bo].absences", days));
        Outcome first = change.change(sent, Teasel.PROJECT, "people.yaml", gone);
        assertThat(first.kind()).isEqualTo(Outcome.Kind.RECORDED);
        String text = text("people.yaml");
        Outcome again = change.change(sent, Teasel.PROJECT, "people.yaml", gone);
        assertThat(again.kind()).isEqualTo(Outcome.Kind.ALREADY);
        assertThat(again.seq()).isEqualTo(first.seq());
        assertThat(text("people.yaml")).isEqualTo(text);
        assertThat(change.change(sent, Teasel.PROJECT, "people.yaml", away).stands())
                .isFalse();

        Sent out = Teasel.by("ada");
        List<Change> back = List.of(new TakeOut("people[bo].absences"));
        assertThat(change.change(out, Teasel.PROJECT, "people.yaml", back).kind())
                .isEqualTo(Outcome.Kind.RECORDED);
        assertThat(change.change(out, Teasel.PROJECT, "people.yaml", back).kind())
                .isEqualTo(Outcome.Kind.ALREADY);
    }

    @Test
    void should_refuse_with_the_line_when_what_is_typed_means_nothing() {
        String before = text("lots.yaml");
        Outcome o = change.change(
                Teasel.by("ada"), Teasel.PROJECT, "lots.yaml", List.of(new Put("lots[R/77.2].quantity", "forty")));

        assertThat(o.stands()).isFalse();
        assertThat(o.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence()).startsWith("lots.yaml:4: lots[2].quantity: found \"forty\""));
        assertThat(text("lots.yaml")).isEqualTo(before);
        assertThat(change.fileOf(Teasel.PROJECT, "lots", "R/77.2")).contains("lots.yaml");
        assertThat(change.fileOf(Teasel.PROJECT, "materials", "peel")).contains("materials/bagging.yaml");
        assertThat(change.fileOf(Teasel.PROJECT, "lots", "none")).isEmpty();
    }
}
