package fayline.store.file.kind;

import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The kind {@code recipes}. */
public final class RecipeKind {
    private static final Keys PARAMETER = Keys.of(
            "a parameter",
            must("id", Forms.NAME, "Its name; steps refer to it as with.NAME."),
            must("about", Forms.TEXT, "What it is."),
            may("usual", Forms.TEXT, "The value taken where a part says nothing; without it the part must say it."));

    private static final Keys HOLD = Keys.of(
            "a hold",
            must("what", Words.of(Fields.words(Recipe.Place.class)), "Which kind of place stays occupied."),
            must("from", Forms.REF, "The step at whose start it is taken."),
            must("to", Forms.REF, "The step at whose end it is free again."),
            may("count", Forms.NUMBER_OR_WITH, "How many; more than one only for ports."));

    static final Keys SHAPE = Keys.of(
            "a recipe",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "Its name."),
            may("about", Forms.TEXT, "When to use it."),
            must("source", Forms.TEXT, "Where it comes from, or \"common practice, no source\"."),
            may("parameters", Listed.of(PARAMETER), "What a part says when it uses the recipe."),
            may("holds", Listed.of(HOLD), "What stays occupied over several steps."),
            must("steps", Listed.some(StepShape.STEP), "The steps in order."));

    private RecipeKind() {}

    /** Reads one recipe. */
    public static Recipe read(Fields f) {
        List<RecipeStep> steps = new ArrayList<>();
        Optional<String> before = Optional.empty();
        for (Fields s : f.list("steps")) {
            RecipeStep step = StepReading.read(s, before);
            steps.add(step);
            before = Optional.of(step.id());
        }
        return new Recipe(
                f.text("id", ""),
                f.text("name", ""),
                f.text("about", ""),
                f.list("parameters").stream()
                        .map(p -> new Recipe.Parameter(p.text("id", ""), p.text("about", ""), p.text("usual", "")))
                        .toList(),
                steps,
                f.list("holds").stream()
                        .map(h -> new Recipe.Hold(
                                h.word("what", Recipe.Place.class).orElse(Recipe.Place.STAND),
                                h.text("from", ""),
                                h.text("to", ""),
                                h.text("count", "1")))
                        .toList(),
                f.text("source", ""));
    }
}
