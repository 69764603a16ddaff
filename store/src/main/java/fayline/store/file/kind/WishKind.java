package fayline.store.file.kind;

import static fayline.store.file.shape.Key.may;
import static fayline.store.file.shape.Key.must;

import fayline.flow.project.shop.LeadWish;
import fayline.store.file.shape.Forms;
import fayline.store.file.shape.Keys;

/** The kind {@code wishes}. */
public final class WishKind {
    static final Keys WISH = Keys.of(
            "a wish",
            must("id", Forms.ID, "Its id."),
            must("step", Forms.PROJECT_STEP_REF, "The step it is about."),
            may("with", Forms.REF, "Who works on it, whoever else does."),
            may("without", Forms.REF, "Who does not work on it."),
            may("at", Forms.REF, "The mould, stand or port where it happens."),
            may("away-from", Forms.REF, "The mould, stand or port where it does not happen."),
            may("from", Forms.MOMENT, "When it begins at the earliest, in the shop's time."),
            may("before", Forms.MOMENT, "The moment before which it begins, in the shop's time."),
            may("together", Forms.REF, "The wish with which it was made in one act; both are withdrawn together."),
            may("by", Forms.REF, "Who wishes it."),
            may("said", Forms.MOMENT, "When that was said, in the shop's time."),
            may("why", Forms.TEXT, "The reason, as the lead puts it."));

    private WishKind() {}

    /** Reads one wish; of one that names nothing or more than one thing the first counts, and a rule refuses it. */
    public static LeadWish wish(Fields f) {
        LeadWish.Kind kind = f.has("with")
                ? LeadWish.Kind.WITH
                : f.has("without")
                        ? LeadWish.Kind.WITHOUT
                        : f.has("at")
                                ? LeadWish.Kind.AT
                                : f.has("away-from") ? LeadWish.Kind.AWAY : LeadWish.Kind.START;
        String on = f.text("with")
                .or(() -> f.text("without"))
                .or(() -> f.text("at"))
                .or(() -> f.text("away-from"))
                .orElse("");
        return new LeadWish(
                f.text("id", ""),
                f.text("step", ""),
                kind,
                on,
                f.moment("from"),
                f.moment("before"),
                f.text("together", ""),
                f.text("by", ""),
                f.moment("said"),
                f.text("why", ""));
    }
}
