package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.Value;
import java.time.Instant;
import java.util.Optional;

/** A note on a step, kept as typed. */
public final class NoteStep {
    private final ShopRecord shop;

    /** On a shop's record. */
    public NoteStep(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a note.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param text the note
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome note(Sent sent, String step, String text, Optional<Instant> at) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definitionWith(StartStep.project(step), StartStep.made(step));
            if (definition.isEmpty()) {
                return Outcome.refused("The project of " + step + " is not in this shop.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.step(step);
            checks.person("by", sent.by());
            checks.text("text", text, true);
            checks.time(sent, when, shop.now());
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The note was not recorded.", checks.problems());
            }
            Value.Fields payload = Value.Fields.NONE
                    .with("step", step)
                    .with("at", when.toString())
                    .with("text", text);
            return shop.append(Checks.entry(shop, sent, StartStep.project(step), EntryKind.STEP_NOTED, payload));
        });
    }
}
