package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.basis.units.QuantityKind.TIME_SPAN;

import fayline.basis.finding.Figure;
import fayline.basis.units.QuantityParser;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Alone;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.MixUse;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.shop.Skill;
import fayline.method.cure.CureState;
import fayline.store.file.shape.Forms;
import fayline.store.file.yaml.Tree;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the steps of a recipe. */
final class StepReading {
    private StepReading() {}

    /** Reads one step; without {@code after} it follows the step before. */
    static RecipeStep read(Fields f, Optional<String> before) {
        int[] crew = f.read("crew", Forms::crew).orElse(new int[] {1, 1});
        Map<Integer, Double> factors = new LinkedHashMap<>();
        f.named("crew-factor")
                .forEach((n, v) -> Fields.attempt(n, Integer::valueOf)
                        .ifPresent(k -> Fields.attempt(v, Double::valueOf).ifPresent(x -> factors.put(k, x))));
        Map<Skill, Integer> skills = new EnumMap<>(Skill.class);
        f.named("skills")
                .forEach((s, v) -> Fields.attempt(s, w -> Fields.constant(w, Skill.class))
                        .ifPresent(k -> Fields.attempt(v, Integer::valueOf).ifPresent(n -> skills.put(k, n))));
        return new RecipeStep(
                f.text("id", ""),
                f.word("kind", StepKind.class).orElse(StepKind.SYSTEM),
                f.text("title", ""),
                f.texts("say"),
                hands(f),
                new RecipeStep.Crew(crew[0], crew[1]),
                factors,
                skills,
                f.word("air", RecipeStep.Air.class).orElse(RecipeStep.Air.QUIET),
                f.yes("interruptible"),
                span(f, "alone"),
                f.list("mixes").stream().map(StepReading::mix).toList(),
                f.text("stage", "0"),
                f.yes("bagged"),
                after(f, before),
                f.texts("watch").stream()
                        .flatMap(t -> Fields.attempt(
                                t, s -> QuantityParser.parse(s, TIME_SPAN).value())
                                .stream())
                        .toList(),
                f.texts("checks"),
                f.texts("record"),
                f.texts("cautions"),
                f.yes("hold"),
                f.yes("which-way"),
                parameter(f.text("when", "")));
    }

    private static String parameter(String when) {
        return when.startsWith("with.") ? when.substring("with.".length()) : when;
    }

    private static List<HandsRate> hands(Fields f) {
        return f.list("hands").stream()
                .map(h -> new HandsRate(
                        h.number("minutes", 0),
                        h.text("per", "step"),
                        h.text("times", "1"),
                        h.word("origin", Figure.Origin.class).orElse(Figure.Origin.ASSUMED)))
                .toList();
    }

    private static MixUse mix(Fields m) {
        return new MixUse(
                m.text("system", ""),
                m.text("purpose", ""),
                m.text("amount", ""),
                m.measure("thickener", FRACTION, "0 %"));
    }

    private static Optional<Alone> span(Fields f, String key) {
        Optional<Fields> below = f.below(key);
        if (below.isPresent()) {
            return below.flatMap(b -> b.word("until", CureState.class)
                    .map(s -> new Alone(Optional.empty(), Optional.of(s), b.text("system", ""))));
        }
        return f.measure(key, TIME_SPAN).map(t -> new Alone(Optional.of(t), Optional.empty(), ""));
    }

    private static List<After> after(Fields f, Optional<String> before) {
        if (!f.has("after")) {
            return before.map(StepReading::following).stream().toList();
        }
        return f.tree().down("after").items().stream()
                .map(t -> t.form() == Tree.Form.SCALAR ? following(t.text()) : link(new Fields(t)))
                .toList();
    }

    private static After following(String step) {
        return new After(step, After.Moment.END, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static After link(Fields a) {
        return new After(
                a.text("step", ""),
                a.word("from", After.Moment.class).orElse(After.Moment.END),
                span(a, "opens"),
                span(a, "shuts"),
                a.below("miss").map(m -> new After.Miss(m.text("does", ""), hands(m))));
    }
}
