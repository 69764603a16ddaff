package fayline.app.web.plan;

import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.design.Made;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Alone;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.result.step.ClockRunning;
import fayline.method.cure.CureState;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The cures that run, parted by what the hands need to know: the next state of each that a step waits for, the states that
 * nothing waits for, and what was reached since yesterday.
 *
 * @param waitedFor one line for each cure, soonest first
 * @param others the other states on their way
 * @param reached states reached since yesterday; what was reached before is no news
 */
record CuresOnToday(List<TodayView.Clock> waitedFor, List<TodayView.Clock> others, List<TodayView.Clock> reached) {
    private static final Duration NEWS = Duration.ofHours(24);

    CuresOnToday {
        waitedFor = List.copyOf(waitedFor);
        others = List.copyOf(others);
        reached = List.copyOf(reached);
    }

    static CuresOnToday of(Sight sight) {
        Instant news = sight.time().now().minus(NEWS);
        List<TodayView.Clock> first = new ArrayList<>();
        List<TodayView.Clock> others = new ArrayList<>();
        List<TodayView.Clock> reached = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (ClockRunning c : sight.result().clocks()) {
            if (c.reached()) {
                if (c.at().filter(t -> t.isAfter(news)).isPresent()) {
                    reached.add(clock(sight, c));
                }
            } else if (awaited(sight, c.step()).contains(c.state()) && shown.add(c.step() + " " + c.system())) {
                first.add(clock(sight, c));
            } else {
                others.add(clock(sight, c));
            }
        }
        return new CuresOnToday(first, others, reached);
    }

    /** The states of a step's mix that steps of its recipe, not done yet, wait for or must come before. */
    private static Set<CureState> awaited(Sight sight, String step) {
        int cut = step.lastIndexOf('/');
        String key = step.substring(cut + 1);
        Set<CureState> states = new HashSet<>();
        String before = "";
        for (RecipeStep s : recipe(sight, step).map(Recipe::steps).orElse(List.of())) {
            Optional<WorkStep> work = sight.work(step.substring(0, cut + 1) + s.id());
            if (work.isEmpty()) {
                continue;
            }
            WorkStep.State state = work.get().state();
            boolean follows = s.after().isEmpty() && before.equals(key);
            List<After> links =
                    s.after().stream().filter(a -> a.step().equals(key)).toList();
            if (state != WorkStep.State.DONE && (follows || s.id().equals(key) || !links.isEmpty())) {
                s.alone().flatMap(Alone::until).ifPresent(states::add);
            }
            if (state == WorkStep.State.TODO) {
                links.forEach(a -> {
                    a.opens().flatMap(Alone::until).ifPresent(states::add);
                    a.shuts().flatMap(Alone::until).ifPresent(states::add);
                });
            }
            before = s.id();
        }
        return states;
    }

    private static Optional<Recipe> recipe(Sight sight, String step) {
        String[] bits = step.split("/", -1);
        Optional<Made> made = bits.length == 4 ? sight.made(bits[1]) : Optional.empty();
        return made.filter(m -> bits[2].matches("[1-9][0-9]{0,2}"))
                .filter(m -> Integer.parseInt(bits[2]) <= m.make().size())
                .flatMap(m -> sight.definition()
                        .recipes()
                        .find(m.make().get(Integer.parseInt(bits[2]) - 1).recipe()));
    }

    private static TodayView.Clock clock(Sight sight, ClockRunning c) {
        String state = c.state().key().replace('-', ' ');
        String measured = c.measured() >= 0.995
                ? "by readings"
                : c.measured() < 0.005 ? "by expected air only" : Math.round(c.measured() * 100) + " % by readings";
        String until = c.at().map(sight.time()::at).orElse("not within sight");
        return new TodayView.Clock(
                sight.stuffName(c.system()) + ": " + state,
                c.title() + ", " + sight.madeName(c.made()),
                c.reached() ? "" : c.at().map(Instant::toString).orElse(""),
                c.reached() ? "reached by computation " + until + "; check by hand" : until,
                c.reached(),
                measured,
                Sight.cardLink(c.step()),
                "/why?of=clock&step=" + Visit.encoded(c.step()) + "&state="
                        + c.state().key(),
                c.key());
    }
}
