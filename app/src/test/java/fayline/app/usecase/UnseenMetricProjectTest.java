package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Severity;
import fayline.flow.card.Card;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.quantity.BagStack;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody else's project in metres: carbon under vacuum in one and two pressings, cures as steps of their own, a heat tent, a
 * sheet that speaks of trays, work already begun. Every expected figure is worked out by hand in the comment beside it.
 */
class UnseenMetricProjectTest {
    private static final Offset<Double> CLOSE = within(1e-9);

    @TempDir
    Path temp;

    private UnseenProject project;

    @BeforeEach
    void read() throws IOException {
        project = UnseenProject.named("second", temp);
    }

    @Test
    void should_verify_clean_when_it_was_never_seen() throws IOException {
        assertThat(VerifyDefinition.verify(UnseenProject.PROJECTS.resolve("second"), Optional.empty(), Instant.EPOCH)
                        .problems())
                .isEmpty();
        assertThat(project.imported.taken()).isTrue();
        assertThat(project.imported.problems()).isEmpty();
        assertThat(project.imported.events()).isEqualTo(3);
    }

    @Test
    void should_be_planned_whole_and_audited_clean() {
        assertThat(project.view.audit()).isEmpty();
        assertThat(project.view.plan().unplanned()).isEmpty();
        // The pod's 8 steps and 6 for each of three small parts.
        assertThat(project.view.plan().steps()).hasSize(26);
        assertThat(project.view.result().findings()).noneMatch(f -> f.severity() == Severity.STOP);
    }

    @Test
    void should_know_what_has_begun() {
        assertThat(project.step("hatch/1/coat").work().state()).isEqualTo(WorkStep.State.DONE);
        assertThat(project.step("pod/1/coat").work().state()).isEqualTo(WorkStep.State.RUNNING);
        assertThat(project.planned("pod/1/coat").start()).isEqualTo(Instant.parse("2026-10-14T05:15:00Z"));
        assertThat(project.planned("pod/1/coat").people()).containsExactlyInAnyOrder("aino", "eetu");
    }

    @Test
    void should_count_cloth_core_and_resin_zone_by_zone() {
        // Stage 1: belly 2.0 m2 x (160 + 245) g = 810 g, rim 0.4 m2 x 2 x 245 g = 196 g: 1006 g of cloth.
        // Resin at 60 % fibre: 1006 x 0.4/0.6 = 670.667 g; with 10 % waste 737.733 g.
        double plies = 1.006 * 0.4 / 0.6;
        assertThat(project.need("pod/1/outer", "taiga")).isCloseTo(plies * 1.1, CLOSE);
        // Cloth with 25 % waste: 160: 2.0 x 1.25 = 2.5 m2; 245: (2.0 + 2 x 0.4) x 1.25 = 3.5 m2.
        assertThat(project.need("pod/1/outer", "kc-160")).isCloseTo(2.5, CLOSE);
        assertThat(project.need("pod/1/outer", "kc-245")).isCloseTo(3.5, CLOSE);
        // Stage 2: the same cloth, and the core of the belly bedded in 0.5 kg/m2: 1.0 kg, with waste 1.1 kg.
        assertThat(project.need("pod/1/inner", "taiga")).isCloseTo(plies * 1.1 + 1.1, CLOSE);
        assertThat(project.need("pod/1/inner", "pvc-8")).isCloseTo(2.5, CLOSE);
        // As made: cloth 2.012 + resin 1.341333 + core 2.0 m2 x 8 mm x 80 kg/m3 = 1.28 + bedding 1.0 = 5.633333 kg.
        assertThat(project.view.result().part("pod").orElseThrow().asMade().kilograms())
                .isCloseTo(2.012 + 2 * plies + 1.28 + 1.0, CLOSE);
    }

    @Test
    void should_draw_the_bag_as_by_hand() {
        BagStack bag = project.step("pod/1/seal-1").bag().orElseThrow();
        // Peel ply: area 2.4 m2 + edge 6.4 m x 0.05 m + pi x 0.05^2 = 2.727854 m2; 10 % spare on sheets: 3.000639 m2.
        assertThat(bag.layers().get(0).what()).isEqualTo("peel ply");
        assertThat(bag.layers().get(0).area().squareMetres()).isCloseTo(3.000639, within(1e-6));
        assertThat(bag.pleats()).isEqualTo(9);
        assertThat(bag.layers())
                .extracting(BagStack.Layer::what)
                .containsExactly("peel ply", "perforated film", "breather", "bag");
    }

    @Test
    void should_take_as_long_as_by_hand() {
        // Cut back: 6.4 m x 20 min = 128 person-minutes: 130 min for one, 64 and so 65 for two.
        assertThat(project.step("pod/1/cut-back").work().hands())
                .containsExactly(new CrewTime(1, 130), new CrewTime(2, 65));
        // The hatch: 3 plies x 0.24 m2 x 12 min + 3 x 5 + 1 batch x 6 = 29.64; for two x 1.1 / 2 = 16.3 and so 20; for
        // three
        // 9.88 and so 10.
        assertThat(project.step("hatch/1/lay").work().hands())
                .containsExactly(new CrewTime(2, 20), new CrewTime(3, 10));
        assertThat(project.step("hatch/1/rest").work().hands()).isEmpty();
    }

    @Test
    void should_mix_in_the_tray_of_the_sheet_at_the_warmest_stand() {
        MixList mix = project.step("hatch/1/lay").batches().get(0);
        // 0.24 m2 x 3 x 245 g = 176.4 g of cloth; resin at 55 %: 176.4 x 0.45/0.55 = 144.327 g; with waste 158.76 g.
        assertThat(mix.total().kilograms()).isCloseTo(0.15876, CLOSE);
        // 100:40: 113.4 g of resin and 45.36 g of hardener.
        assertThat(mix.resin().kilograms()).isCloseTo(0.1134, CLOSE);
        assertThat(mix.hardener().kilograms()).isCloseTo(0.04536, CLOSE);
        assertThat(mix.container()).contains("tray");
        // 2 h for up to 200 g at 20 degC. Cell B is 8 K warmer: exp(60000/8.314463 x (1/293.15 - 1/301.15)) = 1.92309;
        // 120/1.92309 = 62.400 min.
        assertThat(mix.potLife().minutes()).isCloseTo(62.400, within(0.005));
    }

    @Test
    void should_cure_as_long_as_the_sheet_says_at_twenty_degrees() {
        // Air is 20 degC day and night, and nobody counts on a warmer stand for a cure: 30 h and 16 h as the sheet
        // says.
        PlannedStep rest = project.planned("sponson-left/1/rest");
        assertThat(Duration.between(rest.handsEnd(), rest.end())).isEqualTo(Duration.ofHours(30));
        PlannedStep seal = project.planned("pod/1/seal-1");
        assertThat(Duration.between(seal.handsEnd(), seal.end())).isEqualTo(Duration.ofHours(16));
        // The heat tent is a plain span.
        PlannedStep warm = project.planned("pod/1/warm");
        assertThat(Duration.between(warm.handsEnd(), warm.end())).isEqualTo(Duration.ofHours(14));
    }

    @Test
    void should_cure_longer_when_the_shop_is_colder() throws IOException {
        Path colder = temp.resolve("colder");
        DefinitionFolder.from(UnseenProject.PROJECTS.resolve("second"))
                .with("climate.yaml", "climate:\n  usual: {day: 18 degC, night: 18 degC, humidity: 50 %}\n")
                .writeTo(colder);
        UnseenProject cold = new UnseenProject(colder, temp.resolve("cold-data"));
        // exp(60000/8.314463 x (1/291.15 - 1/293.15)) = 1.18424; 30 h x 1.18424 = 2131.63 min, so 2132.
        PlannedStep rest = cold.planned("sponson-left/1/rest");
        assertThat(Duration.between(rest.handsEnd(), rest.end())).isEqualTo(Duration.ofMinutes(2132));
        assertThat(cold.view.audit()).isEmpty();
    }

    @Test
    void should_leave_the_tent_out_when_the_part_does_not_want_it() throws IOException {
        Path cool = temp.resolve("cool");
        DefinitionFolder files = DefinitionFolder.from(UnseenProject.PROJECTS.resolve("second"));
        String parts = files.text("parts.yaml").orElseThrow();
        files.with("parts.yaml", parts.replace(", heat: \"yes\"", "")).writeTo(cool);
        UnseenProject project2 = new UnseenProject(cool, temp.resolve("cool-data"));
        assertThat(project2.view.plan().steps()).hasSize(25);
        assertThat(project2.view.audit()).isEmpty();
    }

    @Test
    void should_tell_the_whole_step_on_its_card() {
        Card card = project.card("pod/1/inner");
        assertThat(card.plies())
                .extracting(Card.PlyLine::zone, Card.PlyLine::material)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("Belly", "Foam 8 mm"),
                        org.assertj.core.groups.Tuple.tuple("Rim", "Carbon twill 245"));
        // 3 layers of the belly and 2 of the rim.
        assertThat(card.plies()).hasSize(5);
        assertThat(card.mixes()).hasSize(2);
        assertThat(card.windows()).anySatisfy(w -> assertThat(w.miss()).contains("Abrade, wipe, dry."));
        assertThat(card.cautions()).isNotEmpty();
        assertThat(card.heading().aircraft()).contains("Smew");
        assertThat(project.card("sponson-left/1/lay").heading().opposite()).isEqualTo("Sponson, right");
        assertThat(project.card("sponson-left/1/lay").whichWay()).isPresent();
        for (Card each : project.cards()) {
            assertThat(each.title()).doesNotContain("with.");
            assertThat(each.say()).isNotEmpty().noneMatch(s -> s.contains("with."));
        }
        assertThat(List.copyOf(project.cards())).hasSize(26);
    }
}
