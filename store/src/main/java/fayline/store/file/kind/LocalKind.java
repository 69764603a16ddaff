package fayline.store.file.kind;

import static fayline.basis.units.QuantityKind.FRACTION;
import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.local.LocalRules;
import fayline.flow.project.local.LocalStage;
import fayline.flow.project.local.LocalTask;
import fayline.flow.project.recipe.StepKind;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Measure;
import fayline.store.file.shape.Numeral;
import fayline.store.file.shape.Words;
import java.util.List;

/** The kind {@code local}. */
public final class LocalKind {
    private static final Keys TASK = Keys.of(
            "a task",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "What it is called in the list."),
            must("of", Listed.some(Forms.REF), "Assemblies, parts and joints whose steps belong to it."),
            may(
                    "kinds",
                    Listed.of(Words.of(Fields.words(StepKind.class))),
                    "Sorts of steps that belong to it; all where nothing is said."),
            may("points", Numeral.count(1, 1000), "What it counts in the list; 1 where nothing is said."),
            may("bought", Measure.share(), "Share of it that was bought finished, as 20 %."));

    private static final Keys STAGE = Keys.of(
            "a stage",
            must("id", Forms.ID, "Its id."),
            must("name", Forms.TEXT, "What it is called."),
            must("of", Listed.some(Forms.REF), "Assemblies, parts and joints that are looked at."),
            may(
                    "before",
                    Listed.of(Forms.STEP_REF),
                    "Steps that do not begin before somebody has looked and nothing found is open."),
            may("look-at", Listed.of(Forms.TEXT), "What is looked at."),
            may(
                    "photos",
                    Numeral.count(0, 99),
                    "How many pictures are there before those steps begin, each with its scale and its direction noted."));

    static final Keys SHAPE = Keys.of(
            "the local rules",
            must("authority", Forms.TEXT, "Who asks: the authority, or who acts for it."),
            may("paid", Listed.of(Forms.REF), "People whose work does not count as the builder's own."),
            may("least-share", Measure.share(), "The share that the builder must have made, where one is asked for."),
            may("tasks", Listed.of(TASK), "The list by which the builder's share is counted."),
            may("stages", Listed.of(STAGE), "The stages at which somebody looks."));

    private LocalKind() {}

    /** Reads the rules; a project without a file has none. */
    public static LocalRules read(Fields f) {
        if (!f.has("authority")) {
            return LocalRules.NONE;
        }
        return new LocalRules(
                f.text("authority", ""),
                f.texts("paid"),
                f.measure("least-share", FRACTION),
                f.list("tasks").stream().map(LocalKind::task).toList(),
                f.list("stages").stream().map(LocalKind::stage).toList());
    }

    private static LocalTask task(Fields t) {
        List<StepKind> kinds = t.texts("kinds").stream()
                .flatMap(k -> Fields.attempt(k, w -> Fields.constant(w, StepKind.class)).stream())
                .toList();
        return new LocalTask(
                t.text("id", ""),
                t.text("name", ""),
                t.texts("of"),
                kinds,
                t.whole("points", 1),
                t.measure("bought", FRACTION, "0 %"));
    }

    private static LocalStage stage(Fields s) {
        return new LocalStage(
                s.text("id", ""),
                s.text("name", ""),
                s.texts("of"),
                s.texts("before"),
                s.texts("look-at"),
                s.whole("photos", 0));
    }
}
