package fayline.store.file.rule.able;

import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Made;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.Placed;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the shop's crew in its usual hours can never do: crews that it lacks, steps without a day, windows without an hour. */
final class Possible {
    private final Draft d;
    private final Problems problems;
    private final List<Person> crew;
    private final WeekHours week;

    Possible(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
        this.crew =
                d.whole().shop().people().stream().filter(p -> !p.volunteer()).toList();
        this.week = new WeekHours(crew);
    }

    void check() {
        d.recipes().forEach(this::crews);
        for (Placed<? extends Keyed> p : d.made()) {
            List<Tree> makes = p.at().down("make").items();
            Made made = (Made) p.value();
            for (int i = 0; i < made.make().size(); i++) {
                Tree at = makes.get(i);
                String recipe = made.make().get(i).recipe();
                Optional<Placed<Recipe>> placed =
                        d.recipes().stream().filter(r -> r.id().equals(recipe)).findFirst();
                int n = i;
                placed.ifPresent(
                        r -> make(new Reach(d.whole(), made, made.make().get(n), r.value()), r, at.down("recipe")));
            }
        }
    }

    private void crews(Placed<Recipe> r) {
        for (int i = 0; i < r.value().steps().size(); i++) {
            RecipeStep step = r.value().steps().get(i);
            Tree at = r.at().down("steps", i);
            for (Map.Entry<Skill, Integer> need : step.skills().entrySet()) {
                List<String> have = crew.stream()
                        .filter(p -> p.skills().contains(need.getKey()))
                        .map(Person::name)
                        .toList();
                if (have.size() < need.getValue()) {
                    problems.stop(
                            at.down("skills", need.getKey().key()),
                            need.getValue() + " people with the skill "
                                    + need.getKey().key(),
                            "at most " + have.size() + ", as many as the crew has"
                                    + (have.isEmpty() ? "" : ": " + String.join(", ", have)),
                            "volunteers are not counted on");
                }
            }
            if (step.crew().least() > crew.size()) {
                problems.stop(
                        at.down("crew"),
                        "a crew of at least " + step.crew().least(),
                        "at most " + crew.size() + ", as many as the shop has",
                        "volunteers are not counted on");
            }
        }
    }

    private void make(Reach reach, Placed<Recipe> r, Tree use) {
        for (int i = 0; i < r.value().steps().size(); i++) {
            RecipeStep step = r.value().steps().get(i);
            if (!reach.exists(step)) {
                continue;
            }
            if (step.crew().least() > crew.size() || (!step.interruptible() && !day(reach, step, use))) {
                continue;
            }
            Tree at = r.at().down("steps", i, "after");
            for (int k = 0; k < step.after().size() && k < at.items().size(); k++) {
                After after = step.after().get(k);
                if (after.shuts().isPresent() && after.miss().isEmpty()) {
                    window(reach, step, after, at.items().get(k).down("shuts"));
                }
            }
        }
    }

    /** Whether a step has a day that is long enough. */
    private boolean day(Reach reach, RecipeStep step, Tree use) {
        int most = Math.max(step.crew().least(), step.crew().useful());
        for (int n = step.crew().least(); n <= most; n++) {
            if (reach.handsMin(step, n) <= week.longestMin(n)) {
                return true;
            }
        }
        problems.stop(
                use,
                "the step " + step.id() + " of " + Problems.quote(use.text()) + ", which takes "
                        + hours(reach.handsMin(step, most)) + " or more without a stop with " + people(most),
                "at most " + hours(week.longestMin(most)) + ", the longest time for which " + people(most)
                        + " are in together",
                "part it, let more people help, or say interruptible: yes where it may stop");
        return false;
    }

    private void window(Reach reach, RecipeStep step, After after, Tree at) {
        Optional<RecipeStep> earlier = reach.step(after.step());
        Optional<double[]> before = earlier.flatMap(e -> reach.toMoment(e, after.from()));
        Optional<double[]> opens = reach.span(after.opens());
        Optional<double[]> shuts = reach.span(after.shuts());
        if (earlier.isEmpty() || before.isEmpty() || opens.isEmpty() || shuts.isEmpty()) {
            return;
        }
        int people = earlier.get().crew().least();
        boolean[] moments = after.from() == After.Moment.START
                ? week.starts(people, earlier.get().interruptible() ? 0 : reach.handsMin(earlier.get()))
                : week.ends(people);
        boolean[] starts = week.starts(step.crew().least(), step.interruptible() ? 0 : reach.handsMin(step));
        boolean met =
                WeekHours.meet(moments, starts, before.get()[0] + opens.get()[0], before.get()[1] + shuts.get()[1]);
        if (!met) {
            String counted = after.from() == After.Moment.START
                    ? "the start of "
                    : after.from() == After.Moment.HANDS_END ? "the hands leave " : "the end of ";
            problems.stop(
                    at,
                    "a window for " + step.id() + " that shuts " + hours(shuts.get()[1]) + " after " + counted
                            + after.step() + (opens.get()[0] > 0 ? ", opens after " + hours(opens.get()[0]) : "")
                            + " and may not be missed",
                    "a window in which the crew is in: in the shop's usual hours it can never be met",
                    "make it longer, or add \"miss:\" with what a missed window costs");
        }
    }

    private static String people(int n) {
        return n == 1 ? "one person" : n + " people";
    }

    private static String hours(double minutes) {
        long m = Math.round(minutes);
        return m < 60 ? m + " min" : m / 60 + " h" + (m % 60 == 0 ? "" : " " + m % 60 + " min");
    }
}
