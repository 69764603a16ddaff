package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.PublishPlan;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.archive.VerifyRecord;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.open.CannotOpenException;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import fayline.flow.audit.BrokenRule;
import fayline.flow.plan.WorkStep;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop as it is seen, from a record and from a bare folder. */
class LookTest {
    private static final Clock MACHINE = Clock.fixed(Instant.parse("2031-05-05T05:05:05Z"), ZoneOffset.UTC);

    @TempDir
    Path temp;

    @Test
    void should_see_the_same_when_a_folder_is_bare_or_read_in() throws IOException {
        ShopView bare = ReadFolder.read(Teasel.path(), Optional.empty(), MACHINE);
        ShopView kept = new LookAtShop(Teasel.readIn().shop).look("").orElseThrow();
        assertThat(bare.now()).isEqualTo(Teasel.START);
        assertThat(bare.work()).isEqualTo(kept.work());
        assertThat(bare.plan()).isEqualTo(kept.plan());
        assertThat(kept.audit())
                .filteredOn(b -> !b.admitted())
                .extracting(BrokenRule::sentence)
                .isEmpty();
        assertThat(kept.result()
                        .step(step("seat/1/release"))
                        .orElseThrow()
                        .work()
                        .state())
                .isEqualTo(WorkStep.State.DONE);
        assertThat(kept.moved()).isEmpty();
        assertThat(kept.projects()).extracting(ShopView.ProjectName::id).containsExactly(Teasel.PROJECT);
        assertThat(new LookAtShop(Teasel.readIn().shop).look("no-such")).isEmpty();
    }

    @Test
    void should_tell_what_moved_when_a_step_begins_late() {
        Teasel teasel = Teasel.readIn();
        LookAtShop look = new LookAtShop(teasel.shop);
        ShopView morning = look.look("").orElseThrow();
        assertThat(look.look("").orElseThrow().plan()).isSameAs(morning.plan());
        teasel.clock.to("2026-03-04T13:00:00Z");
        new StartStep(teasel.shop)
                .start(by("ada"), step("seat/1/lay-up-1"), List.of("ada"), List.of(), "door", Optional.empty());
        ShopView now = look.look("").orElseThrow();
        assertThat(now.result()
                        .step(step("seat/1/lay-up-1"))
                        .orElseThrow()
                        .work()
                        .state())
                .isEqualTo(WorkStep.State.RUNNING);
        assertThat(now.audit())
                .filteredOn(b -> !b.admitted())
                .extracting(BrokenRule::sentence)
                .isEmpty();
        assertThat(now.moved()).isNotEmpty();
        assertThat(now.moved().get(0).sentence(now.zone())).contains("than");
    }

    @Test
    void should_compare_with_the_published_plan_when_there_is_one_today() {
        Teasel teasel = Teasel.readIn();
        LookAtShop look = new LookAtShop(teasel.shop);
        ShopView view = look.look("").orElseThrow();
        assertThat(new PublishPlan(teasel.shop)
                        .publish(by("ada"), view.definition().hash(), view.plan(), "Put together chain by chain.")
                        .stands())
                .isTrue();
        ShopView after = look.look("").orElseThrow();
        assertThat(after.record().published()).isPresent();
        assertThat(after.moved()).isEmpty();
    }

    @Test
    void should_show_a_note_without_planning_anew_where_no_plan_hangs_on_it() {
        Teasel teasel = Teasel.readIn();
        LookAtShop look = new LookAtShop(teasel.shop);
        NoteStep note = new NoteStep(teasel.shop);
        String lay = step("seat/1/lay-up-1");
        note.note(by("ada"), lay, "The first.", Optional.empty());
        ShopView first = look.look("").orElseThrow();
        teasel.clock.plusMinutes(1);
        note.note(by("bo"), lay, "The second.", Optional.empty());
        ShopView second = look.look("").orElseThrow();
        assertThat(second.plan()).isSameAs(first.plan());
        assertThat(second.state().notes()).hasSize(first.state().notes().size() + 1);
        assertThat(second.record().head()).isEqualTo(teasel.shop.state().head());
        ShopView anew = new LookAtShop(teasel.shop).look("").orElseThrow();
        assertThat(second.plan().steps()).isEqualTo(anew.plan().steps());
        assertThat(second.state().notes()).isEqualTo(anew.state().notes());
        teasel.clock.plusMinutes(1);
        new StartStep(teasel.shop).start(by("ada"), lay, List.of("ada"), List.of(), "door", Optional.empty());
        assertThat(look.look("").orElseThrow().plan()).isNotSameAs(first.plan());
    }

    @Test
    void should_move_the_cure_when_colder_readings_come_in() {
        Teasel teasel = Teasel.readIn();
        LookAtShop look = new LookAtShop(teasel.shop);
        teasel.clock.to("2026-03-04T08:00:00Z");
        new StartStep(teasel.shop)
                .start(by("ada"), step("seat/1/lay-up-1"), List.of("ada", "bo"), List.of(), "door", Optional.empty());
        var before = look.look("").orElseThrow();
        teasel.clock.plusMinutes(1);
        var air = new Measured("climate", "", "", "", Map.of("air", "8 degC", "humidity", "60 %"), Optional.empty());
        assertThat(new TakeReading(teasel.shop)
                        .take(by("bo"), Teasel.PROJECT, air)
                        .stands())
                .isTrue();
        var after = look.look("").orElseThrow();
        assertThat(after.state().readings()).hasSize(before.state().readings().size() + 1);
        assertThat(after.work().clocks()).isNotEqualTo(before.work().clocks());
    }

    @Test
    void should_plan_both_and_show_one_when_the_shop_has_two_projects() {
        Teasel teasel = Teasel.readIn();
        DefinitionFolder folder = Teasel.folder();
        DefinitionFolder second = folder.with(
                "project.yaml", folder.text("project.yaml").orElseThrow().replace("id: teasel-1", "id: teasel-2"));
        assertThat(new ImportFolder(teasel.shop).of(second, false).taken()).isTrue();
        ShopView view = new LookAtShop(teasel.shop).look("teasel-2").orElseThrow();
        assertThat(view.project()).isEqualTo("teasel-2");
        assertThat(view.result().steps()).allMatch(s -> s.id().startsWith("teasel-2/"));
        assertThat(view.work().steps()).extracting(WorkStep::project).contains("teasel-1", "teasel-2");
        assertThat(view.projects()).hasSize(2);
        assertThat(view.audit())
                .filteredOn(b -> !b.admitted())
                .extracting(BrokenRule::sentence)
                .isEmpty();
    }

    @Test
    void should_begin_at_the_demos_clock_or_the_last_entry_when_a_data_folder_is_opened() throws IOException {
        Path data = temp.resolve("data");
        String started;
        try (OpenShop shop = OpenShop.openWith(data, Teasel.path(), MACHINE, Optional.empty())) {
            assertThat(shop.shop().minute()).isEqualTo(Teasel.START);
            assertThatThrownBy(() -> OpenShop.open(data, MACHINE, Optional.empty()))
                    .isInstanceOfSatisfying(
                            CannotOpenException.class,
                            e -> assertThat(e.inUse()).isTrue());
            assertThat(VerifyRecord.verify(data, Optional.empty()).fault()).isEmpty();
        }
        Instant later = Teasel.START.plusSeconds(7200);
        try (OpenShop shop = OpenShop.open(data, MACHINE, Optional.of(later))) {
            assertThat(shop.shop().minute()).isEqualTo(later);
            assertThat(new StartStep(shop.shop())
                            .start(
                                    by("ada"),
                                    step("seat/1/lay-up-1"),
                                    List.of("ada"),
                                    List.of(),
                                    "door",
                                    Optional.empty())
                            .stands())
                    .isTrue();
            started = shop.shop().state().head().toString();
        }
        try (OpenShop shop = OpenShop.openWith(data, Teasel.path(), MACHINE, Optional.empty())) {
            assertThat(shop.shop().minute()).isEqualTo(later);
            assertThat(shop.shop().state().head().toString()).isEqualTo(started);
        }
        VerifyRecord.Report report = VerifyRecord.verify(data, Optional.empty());
        assertThat(report.fault()).isEmpty();
        assertThat(report.head()).isEqualTo(started);
        assertThatThrownBy(() -> VerifyRecord.verify(temp, Optional.empty())).isInstanceOf(CannotOpenException.class);
    }
}
