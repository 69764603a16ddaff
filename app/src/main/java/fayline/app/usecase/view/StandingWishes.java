package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.plan.WishWords;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.result.shop.WorkMaker;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the lead wishes, each with what has become of it. */
public final class StandingWishes {
    private StandingWishes() {}

    /** What has become of a wish. */
    public enum State {
        /** The plan keeps it. */
        KEPT,
        /** Its step has no place in the plan. */
        NOT_PLANNED,
        /** Its step is begun or done: it is as it is. */
        BEGUN,
        /** The time in which it was wished is over. */
        OVER,
        /** There is no such step any more. */
        GONE
    }

    /**
     * A wish.
     *
     * @param wish as it is written
     * @param state what has become of it
     * @param words what is wished, as {@code Ben on it}
     */
    public record Standing(LeadWish wish, State state, String words) {
        /** Whether plans are bound by it. */
        public boolean counts() {
            return state == State.KEPT || state == State.NOT_PLANNED;
        }

        /** Why nobody is bound by it, as a clause; empty where plans are. */
        public String passedOver() {
            return switch (state) {
                case KEPT, NOT_PLANNED -> "";
                case BEGUN -> "the step is begun or done";
                case OVER -> "the time in which it was wished is over";
                case GONE -> "there is no such step any more";
            };
        }
    }

    /** All wishes of the shop, in the order in which they are written. */
    public static List<Standing> of(ShopView view) {
        Map<String, WorkStep> steps = new HashMap<>();
        view.work().steps().forEach(s -> steps.put(s.id(), s));
        Set<String> planned = new HashSet<>();
        view.plan().steps().stream().map(Plan.PlannedStep::step).forEach(planned::add);
        SaidByName names = new SaidByName(view);
        return view.definition().shop().wishes().stream()
                .map(w -> {
                    WorkWish wish = WorkMaker.wish(w, view.zone());
                    State state = state(Optional.ofNullable(steps.get(w.step())), wish, view.work(), planned);
                    return new Standing(w, state, names.named(WishWords.what(view.work(), wish)));
                })
                .toList();
    }

    /** How many acts bind plans: of a swap all wishes count as one. */
    public static int acts(ShopView view) {
        return (int) of(view).stream()
                .filter(Standing::counts)
                .map(s -> s.wish().act())
                .distinct()
                .count();
    }

    /** By step, what binds plans of it, in words. */
    public static Map<String, String> byStep(ShopView view) {
        Map<String, String> words = new HashMap<>();
        of(view).stream()
                .filter(Standing::counts)
                .forEach(s -> words.merge(s.wish().step(), s.words(), (a, b) -> a + "; " + b));
        return words;
    }

    private static State state(Optional<WorkStep> step, WorkWish wish, Work work, Set<String> planned) {
        if (step.isEmpty()) {
            return State.GONE;
        }
        if (step.get().state() != WorkStep.State.TODO) {
            return State.BEGUN;
        }
        if (wish.isPast(work.now())) {
            return State.OVER;
        }
        return planned.contains(wish.step()) ? State.KEPT : State.NOT_PLANNED;
    }
}
