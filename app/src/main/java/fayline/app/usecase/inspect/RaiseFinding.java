package fayline.app.usecase.inspect;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.HeldVisit;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.Optional;

/** Something that a visit found, under a number of its own. */
public final class RaiseFinding {
    private final ShopRecord shop;

    /** On a shop's record. */
    public RaiseFinding(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param visit the visit's entry
     * @param made the part or joint
     * @param text what is wrong
     * @param pictures pictures that go with it
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome raise(Sent sent, long visit, String made, String text, Pictures pictures, Optional<Instant> at) {
        if (pictures.refused().isPresent()) {
            return pictures.refused().get();
        }
        return shop.deciding(() -> {
            Optional<HeldVisit> held = shop.state().inspect().visit(visit);
            Optional<Definition> definition = held.flatMap(v -> shop.definitionWith(v.project(), made));
            if (held.isEmpty() || definition.isEmpty()) {
                return Outcome.refused("Entry " + visit + " is no visit that stands in the record.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            checks.time(sent, when, shop.now());
            checks.text("text", text, true);
            if (definition.get().parts().find(made).isEmpty()
                    && definition.get().joints().find(made).isEmpty()) {
                checks.stop("about", "\"" + made + "\"", "a part or joint of the definition", "");
            }
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The finding was not recorded.", checks.problems());
            }
            return pictures.append(
                    shop,
                    sent,
                    held.get().project(),
                    EntryKind.FINDING_RAISED,
                    Value.Fields.NONE
                            .with("visit", visit)
                            .with("number", number(sent, held.get()))
                            .with("about", held.get().project() + "/" + made)
                            .with("at", when.toString())
                            .with("text", text));
        });
    }

    /** Its number: the visit's, and the next within it, never given twice. */
    private String number(Sent sent, HeldVisit visit) {
        Optional<Entry> before = shop.seqOf(sent.client()).flatMap(shop::entry);
        if (before.isPresent()) {
            FoundFault known = shop.state().inspect().faults().get(before.get().seq());
            return known == null ? before.get().fields().text("number") : known.number();
        }
        long found = shop.state().inspect().faults().values().stream()
                .filter(f -> f.visit() == visit.seq())
                .count();
        return visit.number() + "." + (found + 1);
    }
}
