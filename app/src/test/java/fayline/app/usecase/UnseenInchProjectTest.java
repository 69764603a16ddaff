package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.card.Card;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.result.mix.MixList;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody else's project in inches: evening hours at altitude, contact lay-up without a bag, a rib from its airfoil number.
 * Every expected figure is worked out by hand in the comment beside it. 1 oz = 28.349523125 g, 1 ft2 = 0.09290304 m2.
 */
class UnseenInchProjectTest {
    private static final double OZ = 28.349523125e-3;
    private static final double FT2 = 0.09290304;
    private static final Offset<Double> CLOSE = within(1e-9);

    @TempDir
    Path temp;

    private UnseenProject project;

    @BeforeEach
    void read() throws IOException {
        project = UnseenProject.named("first", temp);
    }

    @Test
    void should_verify_clean_when_it_was_never_seen() throws IOException {
        assertThat(VerifyDefinition.verify(UnseenProject.PROJECTS.resolve("first"), Optional.empty(), Instant.EPOCH)
                        .problems())
                .isEmpty();
        assertThat(project.imported.taken()).isTrue();
        assertThat(project.imported.problems()).isEmpty();
    }

    @Test
    void should_be_planned_whole_and_audited_clean() {
        assertThat(project.view.audit()).isEmpty();
        assertThat(project.view.plan().unplanned()).isEmpty();
        assertThat(project.view.plan().steps()).hasSize(14);
    }

    @Test
    void should_count_cloth_and_resin_as_by_hand() {
        // 6 ft2 = 2/3 yd2. Plies 5.8 + 9.0 + 5.8 = 20.6 oz/yd2: cloth 13.7333 oz.
        // Resin at 45 % fibre by mass: 13.7333 x 0.55/0.45 = 16.7852 oz; with 20 % waste 20.1422 oz.
        double clothOz = 20.6 * 2 / 3;
        double mixOz = clothOz * 0.55 / 0.45 * 1.2;
        assertThat(mixOz).isCloseTo(20.1422, within(1e-4));
        assertThat(project.need("tip-left/1/wet-out", "porch")).isCloseTo(mixOz * OZ, CLOSE);
        // Cloth with 10 % waste: two plies of 6 ft2 make 13.2 ft2, one makes 6.6 ft2.
        assertThat(project.need("tip-left/1/wet-out", "plain-58")).isCloseTo(13.2 * FT2, CLOSE);
        assertThat(project.need("tip-left/1/wet-out", "weave-9")).isCloseTo(6.6 * FT2, CLOSE);
        // As made: cloth 13.7333 + resin 16.7852 = 30.5185 oz = 1.9074 lb; the target is 2.2 lb.
        assertThat(project.view.result().part("tip-left").orElseThrow().asMade().kilograms())
                .isCloseTo((clothOz + clothOz * 0.55 / 0.45) * OZ, CLOSE);
    }

    @Test
    void should_cost_what_the_price_in_pounds_and_yards_says() {
        // 13.2 ft2 = 1.466667 yd2 x 9.50 = 13.93; 20.1422 oz = 1.258889 lb x 9.80 = 12.34.
        assertThat(project.cost("tip-left/1/wet-out", "plain-58")).isCloseTo(13.9333, within(1e-4));
        assertThat(project.cost("tip-left/1/wet-out", "porch")).isCloseTo(12.3371, within(1e-4));
    }

    @Test
    void should_take_the_rib_from_its_airfoil_number() {
        // Half thickness of NACA 0012 over the chord: 0.6 (0.2969 x^0.5 - 0.126 x - 0.3516 x2 + 0.2843 x3 - 0.1015 x4).
        // Its integral without 0.6 from 0.15 to 0.70: F(0.70) - F(0.15) = 0.0585057 - 0.0097203 = 0.0487854.
        // Both sides: 2 x 0.6 x 0.0487854 = 0.0585425 of the chord squared, (24 in)2 = 576 in2: 33.720 in2.
        double in2 = 0.0254 * 0.0254;
        assertThat(project.view.result().part("tip-rib").orElseThrow().area().squareMetres() / in2)
                .isCloseTo(33.720, within(0.02));
        // Cloth to resin 1:1, two plies of 5.8 oz/yd2; 33.720 in2 = 0.0260185 yd2: 0.301815 oz; mix with waste 0.362178
        // oz.
        assertThat(project.need("tip-rib/1/lay", "porch") / OZ).isCloseTo(0.36218, within(2e-4));
    }

    @Test
    void should_count_adhesive_as_by_hand() {
        // 48 in x 1 in x 0.030 in = 1.44 in3 = 23.59741 cm3; x 1.25 g/cm3 = 29.49676 g; with 35 % squeeze-out 39.82063
        // g.
        double grams = 1.44 * 16.387064 * 1.25 * 1.35;
        assertThat(grams).isCloseTo(39.8206, within(1e-4));
        assertThat(project.need("tip-close-left/1/glue", "flox-glue")).isCloseTo(grams / 1000, CLOSE);
        MixList mix = project.step("tip-close-left/1/glue").batches().get(0);
        // 100:50 by mass: two thirds and one third.
        assertThat(mix.resin().kilograms() * mix.batches()).isCloseTo(grams / 1000 * 2 / 3, CLOSE);
        assertThat(mix.hardener().kilograms() * mix.batches()).isCloseTo(grams / 1000 / 3, CLOSE);
    }

    @Test
    void should_take_as_long_as_by_hand() {
        // Edge: 10 ft = 3.048 m x 12 min + 15 min = 51.576 person-minutes: 55 min for one, 25.8 and so 30 for two.
        assertThat(project.step("tip-left/1/edge").work().hands())
                .containsExactly(new CrewTime(1, 55), new CrewTime(2, 30));
        // Wax: 3 coats x 6 min x 0.5574 m2 = 10.03 person-minutes: 15 min for one, 5.02 and so 10 for two.
        assertThat(project.step("tip-left/1/wax").work().hands())
                .containsExactly(new CrewTime(1, 15), new CrewTime(2, 10));
        // Wetting: 1.67225 ply-m2 x 15 + 3 plies x 4 + 3 corners x 5 + 3 batches x 4 = 64.08: 32.04 and so 35 for two.
        assertThat(project.step("tip-left/1/wet-out").batches().get(0).batches())
                .isEqualTo(3);
        assertThat(project.step("tip-left/1/wet-out").work().hands()).containsExactly(new CrewTime(2, 35));
    }

    @Test
    void should_let_it_cure_as_long_as_by_hand() {
        // 18 h at 77 degF (25 degC). Left at 18:20 on Monday: 40 min at 25 degC up to 19:00; twelve hours at 68 degF
        // (20 degC)
        // count 2^-0.5 = 0.707107 each: 509.117 min; the remaining 530.883 min from 07:00 end at 15:50:53, so 15:51.
        Instant handsEnd = Instant.parse("2026-05-05T00:20:00Z");
        assertThat(project.planned("tip-left/1/wet-out").handsEnd()).isEqualTo(handsEnd);
        assertThat(project.planned("tip-left/1/wet-out").end()).isEqualTo(Instant.parse("2026-05-05T21:51:00Z"));
    }

    @Test
    void should_tell_the_whole_step_on_its_card() {
        Card card = project.card("tip-left/1/wet-out");
        assertThat(card.plies())
                .extracting(Card.PlyLine::material)
                .containsExactly("Plain glass 5.8", "Glass 9 ounce", "Plain glass 5.8");
        assertThat(card.whichWay().orElseThrow().orient()).contains("garage door");
        assertThat(card.when().people()).containsExactlyInAnyOrder("Quill", "Hollis");
        assertThat(card.when().places()).contains("Tip mould", "Long table");
        assertThat(card.mixes()).singleElement().satisfies(m -> {
            MixList list = m.list();
            assertThat(m.lots()).isNotEmpty();
            // 100:27 by mass, whatever the number of cups.
            assertThat(list.hardener().kilograms() / list.resin().kilograms()).isCloseTo(0.27, CLOSE);
            assertThat(list.batch().kilograms() * list.batches())
                    .isCloseTo(project.need("tip-left/1/wet-out", "porch"), CLOSE);
        });
        assertThat(card.cautions()).isNotEmpty();
        assertThat(card.say()).hasSize(3);
        // The parameter of the recipe stands in the words.
        assertThat(project.card("tip-left/1/wax").say()).containsExactly("Rub on, let haze, rub off: 3 times.");
        assertThat(List.copyOf(project.cards())).hasSize(14);
    }

    @Test
    void should_wait_for_the_delivery_at_its_latest() {
        // Promised for 11 May, may slip to 14 May; planned with the latter.
        assertThat(project.planned("tip-rib/1/lay").start()).isAfterOrEqualTo(Instant.parse("2026-05-14T06:00:00Z"));
    }
}
