package fayline.flow.result.change;

import static fayline.flow.result.SmallShop.joint;
import static fayline.flow.result.SmallShop.make;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.local.LocalRules;
import fayline.flow.project.local.LocalStage;
import fayline.flow.project.stock.Delivery;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.SmallShop;
import fayline.flow.result.change.Reached.Group;
import fayline.flow.result.change.Reached.Standing;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What hangs on what is altered, each kind of dependency planted by itself. */
class ReachTest {
    private final SmallShop shop = new SmallShop();
    private ShopState state = ShopState.at(SmallShop.MONDAY);

    ReachTest() {
        shop.moreParts.add(drawn(
                shop.shell(
                        "lid",
                        Hand.LEFT,
                        Optional.of("lid-right"),
                        make("two-stages", Map.of("resin", "er"), List.of())),
                "WR-200 rev A"));
        shop.moreParts.add(drawn(
                shop.shell(
                        "lid-right",
                        Hand.RIGHT,
                        Optional.of("lid"),
                        make("two-stages", Map.of("resin", "er"), List.of("lid"))),
                "WR-200 rev A"));
        shop.joints.add(joint("lid-to-shell", "shell", "lid"));
        shop.deliveries.add(new Delivery(
                "d-hinge",
                "Hinges",
                "2",
                LocalDate.of(2026, 3, 20),
                Optional.empty(),
                Optional.empty(),
                List.of("lid/1/trim")));
        shop.deliveries.add(new Delivery(
                "d-cloth",
                "g-200",
                "40 m2",
                LocalDate.of(2026, 3, 20),
                Optional.empty(),
                Optional.of(LocalDate.of(2026, 3, 1)),
                List.of()));
        shop.local = new LocalRules(
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(new LocalStage("lids", "Lids before they close", List.of("lid"), List.of(), List.of(), 0)));
    }

    private static Part drawn(Part p, String drawing) {
        return new Part(
                p.id(),
                p.name(),
                p.in(),
                p.hand(),
                p.opposite(),
                p.mould(),
                p.zones(),
                p.make(),
                p.target(),
                p.arm(),
                p.sizes(),
                drawing,
                p.orient(),
                p.lessons(),
                p.afterOpposite(),
                p.sets(),
                p.pieces());
    }

    private List<StepResult> steps(Definition d) {
        return ProjectCalculator.calculate(d, state).steps();
    }

    private ChangeResult reach(String... touches) {
        Definition d = shop.build();
        return ReachCalculator.calculate(d, Touch.allOf(List.of(touches)), steps(d), state);
    }

    private static List<String> ids(ChangeResult r, Group group) {
        return r.of(group).stream().map(Reached::id).toList();
    }

    private static List<String> why(ChangeResult r, String item) {
        return r.reached().stream()
                .filter(x -> x.item().equals(item))
                .findFirst()
                .orElseThrow()
                .why();
    }

    @Test
    void should_make_the_other_hand_otherwise_where_it_is_made_to_the_same_drawing() {
        ChangeResult r = reach("part/lid");

        assertThat(r.made()).containsExactly("lid", "lid-right");
        assertThat(why(r, "made/lid")).containsExactly("the part itself");
        assertThat(why(r, "made/lid-right")).containsExactly("same drawing as Part lid, WR-200 rev A");
    }

    @Test
    void should_only_stand_beside_where_the_other_hand_has_a_drawing_of_its_own() {
        Part right = shop.moreParts.remove(1);
        shop.moreParts.add(drawn(right, "WR-201 rev A"));

        ChangeResult r = reach("part/lid");

        assertThat(r.made()).containsExactly("lid");
        assertThat(why(r, "beside/lid-right")).containsExactly("other hand of Part lid", "comes after Part lid");
    }

    @Test
    void should_find_joints_moulds_orders_checks_weights_and_steps_of_a_part() {
        ChangeResult r = reach("part/lid");

        assertThat(why(r, "beside/lid-to-shell")).contains("bonds Part lid");
        assertThat(ids(r, Group.MOULD)).containsExactly("m-shell");
        assertThat(r.of(Group.MOULD).get(0).detail()).isEqualTo("also makes Part shell");
        assertThat(ids(r, Group.ORDER)).containsExactly("d-hinge");
        assertThat(ids(r, Group.WEIGHT)).containsExactly("lid", "lid-right");
        assertThat(r.of(Group.WEIGHT).get(0).detail()).isEqualTo("target 5 kg");
        assertThat(ids(r, Group.CHECK)).contains("zone/lid/skin", "stage/lids");
        assertThat(ids(r, Group.CARD)).containsExactly("lid", "lid-right");
        assertThat(ids(r, Group.STEP)).contains("lid/1/lay-up-1").noneMatch(s -> s.startsWith("shell/"));
    }

    @Test
    void should_follow_laminates_materials_recipes_resins_and_moulds_to_what_is_made_of_them() {
        List<String> all = List.of("shell", "lid", "lid-right");

        assertThat(reach("laminate/skin").made()).isEqualTo(all);
        assertThat(reach("recipe/two-stages").made()).isEqualTo(all);
        assertThat(reach("mould/m-shell").made()).isEqualTo(all);
        assertThat(reach("material/foam-10").made()).isEqualTo(all);
        assertThat(why(reach("material/foam-10"), "made/lid")).contains("foam-10 name in laminate Skin");
        assertThat(reach("system/paste").made()).containsExactly("lid-to-shell");
        assertThat(reach("recipe/bond").made()).containsExactly("lid-to-shell");
        assertThat(reach("system/er").made()).isEqualTo(all);
        assertThat(ids(reach("material/g-200"), Group.ORDER)).contains("d-cloth");
        assertThat(ids(reach("laminate/skin"), Group.DESIGN)).containsExactly("laminate/skin");
        // bagging film is named by no laminate, but steps take it
        assertThat(reach("material/film").made()).isEqualTo(all);
    }

    @Test
    void should_name_the_parts_that_an_altered_joint_bonds() {
        ChangeResult r = reach("joint/lid-to-shell");

        assertThat(r.made()).containsExactly("lid-to-shell");
        assertThat(why(r, "beside/lid")).containsExactly("bonded by Joint lid-to-shell");
        assertThat(ids(r, Group.CHECK)).contains("joint/lid-to-shell");
    }

    @Test
    void should_tell_made_from_in_work_and_not_begun() {
        Definition d = shop.build();
        Map<String, ShopState.StepFacts> facts = new HashMap<>();
        for (StepResult s : steps(d)) {
            boolean begun = s.made().equals("shell")
                    || (s.made().equals("lid") && s.key().equals("release"));
            if (begun) {
                facts.put(
                        s.made() + "/" + s.make() + "/" + s.key(),
                        new ShopState.StepFacts(
                                SmallShop.MONDAY,
                                Optional.of(SmallShop.MONDAY.plus(Duration.ofMinutes(30))),
                                Optional.empty(),
                                List.of("ada"),
                                List.of(),
                                0));
            }
        }
        assertThat(facts).containsKey("lid/1/release");
        ChangeResult r =
                ReachCalculator.calculate(d, Touch.allOf(List.of("laminate/skin")), steps(d), state.withSteps(facts));

        assertThat(r.of(Group.MADE))
                .extracting(Reached::standing)
                .containsExactly(Standing.MADE, Standing.IN_WORK, Standing.NOT_BEGUN);
        assertThat(r.count(Group.MADE, Standing.MADE)).isEqualTo(1);
        assertThat(ids(r, Group.CARD)).containsExactly("lid", "lid-right");
    }

    @Test
    void should_pass_over_what_the_definition_does_not_hold() {
        assertThat(reach("part/nothing", "colour/red").reached()).isEmpty();
        assertThat(Touch.of("nothing")).isEmpty();
        assertThat(Touch.of("part/")).isEmpty();
        assertThat(new Touch(Touch.Sort.PART, "nothing").isIn(shop.build())).isFalse();
        assertThat(new Touch(Touch.Sort.MOULD, "m-shell").isIn(shop.build())).isTrue();
    }
}
