package fayline.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.WishForSteps;
import fayline.app.usecase.act.WishForSteps.Asked;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.StandingWishes;
import fayline.app.usecase.view.StandingWishes.State;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.shop.LeadWish;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Wishes over the record: what stands in the file, what becomes of them, what ends with what. */
class WishForStepsTest {
    private final Teasel t = Teasel.readIn();
    private final LookAtShop looking = new LookAtShop(t.shop);
    private final WishForSteps wishes = new WishForSteps(t.shop);

    private ShopView look() {
        return looking.look("").orElseThrow();
    }

    /** The first step of the plan that has one pair of hands or more and has not begun. */
    private PlannedStep first() {
        return look().plan().steps().stream()
                .filter(p -> look().work().steps().stream()
                        .anyMatch(s -> s.id().equals(p.step()) && s.state() == WorkStep.State.TODO))
                .filter(p -> !p.people().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private Outcome wish(LeadWish.Kind kind, String on, String why) {
        return wishes.wish(Teasel.by("ada"), Teasel.PROJECT, List.of(Asked.of(first().step(), kind, on)), why);
    }

    private String text() {
        return t.shop.folder(Teasel.PROJECT).text("wishes.yaml").orElse("");
    }

    private List<LeadWish> standing() {
        return look().definition().shop().wishes().stream().toList();
    }

    @Test
    void should_write_who_when_and_why_in_a_file_of_the_shop_and_leave_no_file_behind_when_withdrawn() {
        String hash = look().definition().hash();
        String who = first().people().get(0);
        Outcome o = wish(LeadWish.Kind.WITH, who, "said: \"so\"");
        assertThat(o.stands()).isTrue();
        assertThat(text()).startsWith("wishes:\n  - {id: w-").contains("with: " + who, "by: ada", "2026-03-03T07:30");
        assertThat(standing()).singleElement().satisfies(w -> {
            assertThat(w.why()).isEqualTo("said: \"so\"");
            assertThat(w.said()).contains(LocalDateTime.parse("2026-03-03T07:30"));
        });
        assertThat(t.shop.entries(o.seq()).get(0).by()).isEqualTo("ada");
        assertThat(t.shop.entries(o.seq()).get(0).project()).isEmpty();
        assertThat(wishes.withdraw(
                                Teasel.by("bo"),
                                Teasel.PROJECT,
                                standing().get(0).id())
                        .stands())
                .isTrue();
        assertThat(t.shop.folder(Teasel.PROJECT).text("wishes.yaml")).isEmpty();
        assertThat(look().definition().hash()).isEqualTo(hash);
    }

    @Test
    void should_take_the_place_of_the_opposite_and_of_another_start_and_say_so() {
        String who = first().people().get(0);
        wish(LeadWish.Kind.WITH, who, "");
        assertThat(wish(LeadWish.Kind.WITHOUT, who, "").sentence()).contains("takes the place of an earlier wish");
        assertThat(standing()).extracting(LeadWish::kind).containsExactly(LeadWish.Kind.WITHOUT);
        assertThat(wish(LeadWish.Kind.WITHOUT, who, "again").kind()).isEqualTo(Outcome.Kind.NOTHING);
        for (String day : List.of("2026-03-05", "2026-03-06")) {
            wishes.wish(
                    Teasel.by("ada"),
                    Teasel.PROJECT,
                    List.of(Asked.start(
                            standing().get(0).step(),
                            Optional.of(LocalDateTime.parse(day + "T08:00")),
                            Optional.empty())),
                    "");
        }
        assertThat(standing())
                .filteredOn(w -> w.kind() == LeadWish.Kind.START)
                .singleElement()
                .satisfies(w -> assertThat(w.from()).contains(LocalDateTime.parse("2026-03-06T08:00")));
    }

    @Test
    void should_keep_comments_and_other_wishes_of_a_file_written_by_hand() {
        String step = first().step();
        String hand = "wishes:\n  # Bo asked for it.\n  - {id: by-hand, step: " + step + ", without: bo}\n";
        assertThat(new SaveFile(t.shop)
                        .save(Teasel.by("ada"), Teasel.PROJECT, "wishes.yaml", hand)
                        .stands())
                .isTrue();
        wish(LeadWish.Kind.WITH, "ada", "");
        assertThat(text()).startsWith(hand).contains("with: ada");
        wishes.withdraw(Teasel.by("ada"), Teasel.PROJECT, standing().get(1).id());
        assertThat(text()).isEqualTo(hand);
        assertThat(wishes.withdraw(Teasel.by("ada"), Teasel.PROJECT, "never-was")
                        .stands())
                .isFalse();
    }

    @Test
    void should_pass_over_a_wish_quietly_once_its_step_is_begun_its_time_is_over_or_it_is_gone() {
        PlannedStep step = first();
        wish(LeadWish.Kind.WITH, step.people().get(0), "");
        assertThat(state(0)).isEqualTo(State.KEPT);
        assertThat(StandingWishes.byStep(look())).containsKey(step.step());
        String more = text()
                + "  - {id: late, step: "
                + look().plan().steps().stream()
                        .map(PlannedStep::step)
                        .filter(s -> !s.equals(step.step()))
                        .reduce((a, b) -> b)
                        .orElseThrow()
                + ", before: 2026-03-03T07:00}\n"
                + "  - {id: gone, step: teasel-1/no-such/1/step, with: bo}\n";
        assertThat(new SaveFile(t.shop)
                        .save(Teasel.by("ada"), Teasel.PROJECT, "wishes.yaml", more)
                        .stands())
                .isTrue();
        assertThat(state(1)).isEqualTo(State.OVER);
        assertThat(state(2)).isEqualTo(State.GONE);
        assertThat(look().audit()).isEmpty();
        t.clock.to(step.start().plusSeconds(60).toString());
        Outcome begun = new StartStep(t.shop)
                .start(Teasel.by("bo"), step.step(), step.people(), step.places(), "nose forward", Optional.empty());
        assertThat(begun.stands()).as(begun.sentence() + begun.problems()).isTrue();
        assertThat(state(0)).isEqualTo(State.BEGUN);
        assertThat(StandingWishes.acts(look())).isZero();
        assertThat(look().audit()).isEmpty();
    }

    private State state(int n) {
        return StandingWishes.of(look()).get(n).state();
    }
}
