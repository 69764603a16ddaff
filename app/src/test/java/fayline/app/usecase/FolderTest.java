package fayline.app.usecase;

import static fayline.app.usecase.Teasel.by;
import static fayline.app.usecase.Teasel.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.FinishStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.folder.ExportFolder;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.basis.finding.InputProblem;
import fayline.flow.record.EntryKind;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders into the record and out of it. */
class FolderTest {
    @TempDir
    Path temp;

    @Test
    void should_hold_every_file_and_event_when_a_folder_is_read_in() {
        Teasel teasel = Teasel.readIn();
        RecordState state = teasel.shop.state();
        DefinitionFolder folder = Teasel.folder();
        assertThat(state.files(Teasel.PROJECT).keySet()).containsExactlyElementsOf(folder.paths());
        state.files(Teasel.PROJECT)
                .forEach((path, file) -> assertThat(file.bytes())
                        .as(path)
                        .isEqualTo(folder.bytes(path).orElseThrow()));
        assertThat(state.shopFiles())
                .containsKeys("people.yaml", "recipes/skin.yaml")
                .doesNotContainKey("joints.yaml");
        assertThat(teasel.shop.readDefinition(Teasel.PROJECT).hash()).isEqualTo(folder.hash());
        assertThat(state.step(step("seat/1/release")).people()).containsExactly("ada", "bo");
        assertThat(state.step(step("seat/1/release")).notes()).hasSize(1);
        assertThat(state.readings(Teasel.PROJECT)).hasSize(2);
        assertThat(state.readings(Teasel.PROJECT).get(0).value()).isEqualTo("3/64 in");
        assertThat(state.readings(Teasel.PROJECT).get(0).values()).containsEntry("instrument", "feeler gauge");
        assertThat(state.conflicts()).isEmpty();
    }

    @Test
    void should_record_nothing_when_the_same_folder_is_read_in_again() {
        Teasel teasel = Teasel.readIn();
        long before = teasel.log.head().seq();
        Imported again = new ImportFolder(teasel.shop).of(Teasel.folder(), false);
        assertThat(again.taken()).isTrue();
        assertThat(again.files() + again.events()).isZero();
        assertThat(teasel.log.head().seq()).isEqualTo(before);
    }

    @Test
    void should_record_one_entry_for_each_change_when_a_changed_folder_is_read_in() {
        Teasel teasel = Teasel.readIn();
        DefinitionFolder folder = Teasel.folder();
        DefinitionFolder changed = folder.with("notes.txt", "kept, not read")
                .with("people.yaml", folder.text("people.yaml").orElseThrow() + "# more\n")
                .without("README.md");
        Imported imported = new ImportFolder(teasel.shop).of(changed, false);
        assertThat(imported.problems().stream().map(InputProblem::sentence)).isEmpty();
        assertThat(imported.files()).isEqualTo(3);
        assertThat(teasel.shop.state().files(Teasel.PROJECT))
                .containsKey("notes.txt")
                .doesNotContainKey("README.md");
    }

    @Test
    void should_record_nothing_and_say_where_when_definition_or_history_is_wrong() {
        Teasel teasel = Teasel.empty(new MemoryLog());
        DefinitionFolder folder = Teasel.folder();
        Imported noRecipe = new ImportFolder(teasel.shop).of(folder.without("recipes/skin.yaml"), false);
        assertThat(noRecipe.taken()).isFalse();
        String history = folder.text("history/march.yaml").orElseThrow();
        Imported backwards = new ImportFolder(teasel.shop)
                .of(
                        folder.with(
                                "history/march.yaml",
                                history.replace(
                                        "at: 2026-03-02T08:45, by: bo, do: note",
                                        "at: 2026-03-02T08:00, by: bo, do: finish")),
                        false);
        assertThat(backwards.taken()).isFalse();
        assertThat(backwards.problems())
                .anyMatch(p -> p.file().equals("history/march.yaml")
                        && p.line() == 2
                        && p.expected().contains("finish"));
        assertThat(teasel.log.head().seq()).isZero();
        assertThat(teasel.shop.state().projects()).isEmpty();
    }

    @Test
    void should_keep_the_shops_own_files_when_a_second_project_brings_others() {
        Teasel teasel = Teasel.readIn();
        DefinitionFolder folder = Teasel.folder();
        DefinitionFolder second = folder.with(
                        "project.yaml",
                        folder.text("project.yaml").orElseThrow().replace("id: teasel-1", "id: teasel-2"))
                .with("shop.yaml", folder.text("shop.yaml").orElseThrow().replace("Boathouse", "Barn"));
        Imported refused = new ImportFolder(teasel.shop).of(second, false);
        assertThat(refused.taken()).isFalse();
        assertThat(refused.problems()).singleElement().satisfies(p -> {
            assertThat(p.file()).isEqualTo("shop.yaml");
            assertThat(p.suggestion()).contains("--take-shop");
        });
        assertThat(teasel.shop.state().projects()).containsExactly(Teasel.PROJECT);
        Imported taken = new ImportFolder(teasel.shop).of(second, true);
        assertThat(taken.taken()).isTrue();
        assertThat(teasel.shop.state().projects()).containsExactly(Teasel.PROJECT, "teasel-2");
        assertThat(teasel.shop.readDefinition(Teasel.PROJECT).shop().name()).isEqualTo("Barn");
    }

    /** Whatever was edited and done, the exported folder read in elsewhere gives the same files, steps, notes and readings. */
    @Test
    void should_reach_the_same_state_when_an_exported_folder_is_read_in_elsewhere() {
        for (int seed = 1; seed <= 12; seed++) {
            Random random = new Random(seed);
            Teasel one = Teasel.readIn();
            for (int i = 0; i < 25; i++) {
                act(one, random);
            }
            DefinitionFolder out = new ExportFolder(one.shop).files(Teasel.PROJECT);
            one.shop
                    .state()
                    .files(Teasel.PROJECT)
                    .forEach((path, file) ->
                            assertThat(out.bytes(path).orElseThrow()).isEqualTo(file.bytes()));

            Teasel two = Teasel.empty(new MemoryLog());
            two.clock.to("2026-04-20T12:00:00Z");
            Imported imported = new ImportFolder(two.shop).of(out, false);
            assertThat(imported.taken() ? List.of() : imported.problems())
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(told(two.shop.state())).as("seed %d", seed).isEqualTo(told(one.shop.state()));
            DefinitionFolder again = new ExportFolder(two.shop).files(Teasel.PROJECT);
            assertThat(again.paths()).isEqualTo(out.paths());

            long before = one.log.head().seq();
            assertThat(new ImportFolder(one.shop).of(out, false).events())
                    .as("seed %d", seed)
                    .isZero();
            assertThat(one.log.head().seq()).isEqualTo(before);
        }
    }

    private static void act(Teasel t, Random random) {
        t.clock.plusMinutes(1 + random.nextInt(200));
        List<String> steps = List.of(
                "seat/1/release", "seat/1/lay-up-1", "seat/1/bag-1", "fairing/1/lay-up-1", "rib-left/1/release");
        String step = step(steps.get(random.nextInt(steps.size())));
        String who = random.nextBoolean() ? "ada" : "bo";
        var sent = by(who, random);
        switch (random.nextInt(7)) {
            case 0 ->
                new StartStep(t.shop)
                        .start(
                                sent,
                                step,
                                List.of("bo", "ada"),
                                List.of("bench-1"),
                                "say \"door\"\n: yes #1",
                                Optional.empty());
            case 1 ->
                new FinishStep(t.shop)
                        .finish(
                                sent,
                                step,
                                random.nextBoolean() ? List.of("ada") : List.of(),
                                "",
                                "",
                                Optional.empty());
            case 2 ->
                new NoteStep(t.shop).note(sent, step, " é€\uD83D\uDE00 - 'x' \\ \t\"y\"\n- z: [1] ", Optional.empty());
            case 3 ->
                new TakeReading(t.shop)
                        .take(
                                sent,
                                Teasel.PROJECT,
                                new Measured(
                                        "gap",
                                        "fairing-edge",
                                        "A",
                                        "dry",
                                        Map.of("value", "3/32 in", "instrument", "a, b: c"),
                                        Optional.empty()));
            case 4 ->
                new TakeReading(t.shop)
                        .take(
                                sent,
                                Teasel.PROJECT,
                                new Measured(
                                        "climate",
                                        "",
                                        "",
                                        "",
                                        Map.of("air", "18.5 degC", "humidity", "55 %"),
                                        Optional.empty()));
            case 5 -> {
                long entry = 1L + random.nextInt((int) t.log.head().seq());
                if (random.nextBoolean()) {
                    new CorrectStep(t.shop).withdraw(sent, entry, "not so: 1");
                } else {
                    new CorrectStep(t.shop)
                            .correct(
                                    sent,
                                    entry,
                                    new Mended(
                                            Optional.of(t.shop.minute().minusSeconds(60L * random.nextInt(500))),
                                            List.of("bo"),
                                            List.of(),
                                            "",
                                            "",
                                            "better",
                                            "",
                                            "",
                                            "",
                                            Map.of("value", "4 mm")),
                                    "why: because");
                }
            }
            default -> {
                String text = t.shop.folder(Teasel.PROJECT).text("climate.yaml").orElseThrow();
                new SaveFile(t.shop).save(sent, Teasel.PROJECT, "climate.yaml", text + "# " + random.nextInt(9) + "\n");
            }
        }
    }

    /** Everything that a state says but for the places in the sequence. */
    private static List<String> told(RecordState state) {
        List<String> told = new ArrayList<>();
        state.files(Teasel.PROJECT).forEach((p, f) -> told.add(p + " " + f.sha256()));
        for (StepRecord s : state.steps().values()) {
            if (s.startedBy() + s.finishedBy() > 0 || !s.notes().isEmpty()) {
                told.add(s.step()
                        + s.started()
                        + s.finished()
                        + s.people()
                        + s.places()
                        + s.whichWay()
                        + s.signed()
                        + s.slip());
                s.notes().forEach(n -> told.add(n.at() + n.by() + n.text()));
            }
        }
        for (TakenReading r : state.readings()) {
            told.add(r.at() + r.by() + r.project() + r.kind() + r.of() + r.station() + r.state() + r.values());
        }
        told.add("conflicts " + state.conflicts().size());
        return told;
    }

    @Test
    void should_keep_times_apart_when_the_clock_shows_them_twice() {
        Teasel one = Teasel.readIn();
        DefinitionFolder folder = one.shop.folder(Teasel.PROJECT);
        new SaveFile(one.shop)
                .save(
                        by("ada"),
                        Teasel.PROJECT,
                        "shop.yaml",
                        folder.text("shop.yaml").orElseThrow().replace("Etc/UTC", "Europe/Lisbon"));
        one.clock.to("2026-10-25T00:30:00Z");
        new NoteStep(one.shop).note(by("ada"), step("seat/1/bag-1"), "before", Optional.empty());
        one.clock.to("2026-10-25T01:30:00Z");
        new NoteStep(one.shop).note(by("ada"), step("seat/1/bag-1"), "after", Optional.empty());
        Teasel two = Teasel.empty(new MemoryLog());
        two.clock.to("2026-11-01T00:00:00Z");
        DefinitionFolder out = new ExportFolder(one.shop).files(Teasel.PROJECT);
        assertThat(new ImportFolder(two.shop).of(out, false).taken()).isTrue();
        assertThat(two.shop.state().step(step("seat/1/bag-1")).notes())
                .extracting(n -> n.at().toString())
                .containsExactly("2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z");
    }

    @Test
    void should_write_only_into_a_new_or_empty_folder() throws IOException {
        Teasel teasel = Teasel.readIn();
        Path out = temp.resolve("out");
        assertThat(new ExportFolder(teasel.shop).to(Teasel.PROJECT, out))
                .isEqualTo(Teasel.folder().paths().size());
        assertThat(DefinitionFolder.from(out).hash()).isEqualTo(Teasel.folder().hash());
        assertThat(Files.readAllBytes(out.resolve("history/march.yaml")))
                .isEqualTo(Files.readAllBytes(Teasel.path().resolve("history/march.yaml")));
        assertThatThrownBy(() -> new ExportFolder(teasel.shop).to(Teasel.PROJECT, out))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("not empty");
    }

    @Test
    void should_close_an_import_with_its_counts() {
        Teasel teasel = Teasel.readIn();
        var last = teasel.log.read(teasel.log.head().seq()).get(0);
        assertThat(last.kind()).isEqualTo(EntryKind.FOLDER_IMPORTED.key());
        assertThat(last.fields().whole("events")).contains(6L);
        assertThat(last.fields().text("definition")).isEqualTo(Teasel.folder().hash());
    }
}
