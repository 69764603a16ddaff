package fayline.flow.result;

import fayline.basis.finding.Figure.Origin;
import fayline.basis.units.Fraction;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Alone;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.MixUse;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.RecipeStep.Air;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.shop.Skill;
import fayline.method.cure.CureState;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Recipes for {@link SmallShop}, invented. */
final class SmallRecipes {
    private SmallRecipes() {}

    static Recipe twoStages() {
        return new Recipe(
                "two-stages",
                "Skin in two stages",
                "",
                List.of(
                        new Recipe.Parameter("resin", "the resin", ""),
                        new Recipe.Parameter("ports", "ports", "1"),
                        new Recipe.Parameter("weigh", "whether it is weighed", "yes")),
                List.of(
                        step("release", StepKind.RELEASE)
                                .rate(8, "m2")
                                .alone(wall(60))
                                .make(),
                        step("leak-test", StepKind.BAG)
                                .rate(20, "step")
                                .skill(Skill.BAG)
                                .make(),
                        step("lay-up-1", StepKind.LAY_UP)
                                .rate(15, "ply-m2")
                                .rate(5, "batch")
                                .crew(2, 4)
                                .skill(Skill.LAMINATE)
                                .stage("1")
                                .mix(new MixUse("with.resin", "plies", "", new Fraction(0)))
                                .after(after(
                                        "leak-test",
                                        After.Moment.END,
                                        Optional.empty(),
                                        Optional.of(wall(3 * 1440)),
                                        "Test again."))
                                .make(),
                        step("bag-1", StepKind.BAG)
                                .rate(10, "m2")
                                .crew(2, 3)
                                .skill(Skill.BAG)
                                .bagged()
                                .after(after(
                                        "lay-up-1",
                                        After.Moment.HANDS_END,
                                        Optional.empty(),
                                        Optional.of(wall(60)),
                                        ""))
                                .alone(until(CureState.HANDLING, "with.resin"))
                                .make(),
                        step("lay-up-2", StepKind.LAY_UP)
                                .rate(15, "ply-m2")
                                .rate(10, "core-m2")
                                .crew(2, 4)
                                .skill(Skill.LAMINATE)
                                .stage("2")
                                .mix(new MixUse("with.resin", "core-bedding", "0.5 kg/m2", new Fraction(0)))
                                .mix(new MixUse("with.resin", "plies", "", new Fraction(0)))
                                .after(after("bag-1", After.Moment.END, Optional.empty(), Optional.empty(), ""))
                                .after(after(
                                        "lay-up-1",
                                        After.Moment.HANDS_END,
                                        Optional.of(until(CureState.RECOAT_OPENS, "with.resin")),
                                        Optional.of(until(CureState.RECOAT_SHUTS, "with.resin")),
                                        "Abrade with.resin, wipe, dry."))
                                .make(),
                        step("bag-2", StepKind.BAG)
                                .rate(10, "m2")
                                .crew(2, 3)
                                .bagged()
                                .alone(until(CureState.DEMOULD, "with.resin"))
                                .make(),
                        step("demould", StepKind.DEMOULD)
                                .rate(30, "step")
                                .crew(2, 3)
                                .make(),
                        step("weigh", StepKind.WEIGH)
                                .rate(5, "step")
                                .when("weigh")
                                .make(),
                        step("trim", StepKind.TRIM).rate(10, "m").air(Air.DUST).make()),
                List.of(
                        new Recipe.Hold(Recipe.Place.MOULD, "release", "demould", "1"),
                        new Recipe.Hold(Recipe.Place.STAND, "leak-test", "demould", "1"),
                        new Recipe.Hold(Recipe.Place.STAND, "trim", "trim", "1"),
                        new Recipe.Hold(Recipe.Place.PORT, "bag-1", "bag-1", "with.ports")),
                "invented");
    }

    static Recipe bond() {
        return new Recipe(
                "bond",
                "Rigid bond",
                "",
                List.of(),
                List.of(step("bond", StepKind.BOND)
                        .rate(10, "joint-m")
                        .rate(3, "clamps")
                        .crew(2, 3)
                        .skill(Skill.BOND)
                        .mix(new MixUse("with.adhesive", "joint", "", new Fraction(0)))
                        .alone(until(CureState.HANDLING, "with.adhesive"))
                        .make()),
                List.of(),
                "invented");
    }

    static Recipe noLeakTest() {
        return new Recipe(
                "no-test",
                "Skin without a test",
                "",
                List.of(new Recipe.Parameter("resin", "the resin", "er")),
                List.of(
                        step("lay-up", StepKind.LAY_UP)
                                .rate(15, "ply-m2")
                                .stage("1")
                                .mix(new MixUse("with.resin", "plies", "", new Fraction(0)))
                                .make(),
                        step("bag", StepKind.BAG).rate(10, "m2").bagged().make()),
                List.of(),
                "invented");
    }

    static Recipe cureByItself() {
        return new Recipe(
                "by-itself",
                "Closed, then left alone",
                "",
                List.of(),
                List.of(
                        step("close", StepKind.BAG).rate(10, "step").make(),
                        step("cure", StepKind.CURE)
                                .alone(until(CureState.HANDLING, "er"))
                                .make()),
                List.of(),
                "invented");
    }

    static Alone wall(double minutes) {
        return new Alone(Optional.of(TimeSpan.ofMinutes(minutes)), Optional.empty(), "");
    }

    static Alone until(CureState state, String system) {
        return new Alone(Optional.empty(), Optional.of(state), system);
    }

    private static After after(
            String key, After.Moment from, Optional<Alone> opens, Optional<Alone> shuts, String miss) {
        return new After(
                key,
                from,
                opens,
                shuts,
                miss.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new After.Miss(miss, List.of(new HandsRate(30, "m2", "1", Origin.ASSUMED)))));
    }

    private static Draft step(String key, StepKind kind) {
        return new Draft(key, kind);
    }

    /** A step being written. */
    private static final class Draft {
        private final String key;
        private final StepKind kind;
        private final List<HandsRate> rates = new java.util.ArrayList<>();
        private final List<MixUse> mixes = new java.util.ArrayList<>();
        private final List<After> afters = new java.util.ArrayList<>();
        private final Map<Skill, Integer> skills = new java.util.HashMap<>();
        private RecipeStep.Crew crew = new RecipeStep.Crew(1, 2);
        private Air air = Air.QUIET;
        private Optional<Alone> alone = Optional.empty();
        private String stage = "";
        private boolean bagged;
        private String when = "";

        Draft(String key, StepKind kind) {
            this.key = key;
            this.kind = kind;
        }

        Draft rate(double minutes, String per) {
            rates.add(new HandsRate(minutes, per, "1", Origin.ASSUMED));
            return this;
        }

        Draft mix(MixUse use) {
            mixes.add(use);
            air = Air.WET;
            return this;
        }

        Draft after(After after) {
            afters.add(after);
            return this;
        }

        Draft skill(Skill skill) {
            skills.put(skill, 1);
            return this;
        }

        Draft crew(int least, int useful) {
            crew = new RecipeStep.Crew(least, useful);
            return this;
        }

        Draft air(Air what) {
            air = what;
            return this;
        }

        Draft alone(Alone what) {
            alone = Optional.of(what);
            return this;
        }

        Draft stage(String what) {
            stage = what;
            return this;
        }

        Draft bagged() {
            bagged = true;
            air = Air.WET;
            return this;
        }

        Draft when(String what) {
            when = what;
            return this;
        }

        RecipeStep make() {
            return new RecipeStep(
                    key,
                    kind,
                    "Do " + key + " with with.resin",
                    List.of("Work on " + key + "."),
                    rates,
                    crew,
                    Map.of(3, 1.2),
                    skills,
                    air,
                    false,
                    alone,
                    mixes,
                    stage,
                    bagged,
                    afters,
                    bagged ? List.of(TimeSpan.ofMinutes(15)) : List.of(),
                    List.of("Check " + key + "."),
                    List.of("Time of " + key + "."),
                    List.of(),
                    false,
                    false,
                    when);
        }
    }
}
