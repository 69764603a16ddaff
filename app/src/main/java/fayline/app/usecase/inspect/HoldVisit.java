package fayline.app.usecase.inspect;

import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.Optional;

/** Somebody has looked: an inspector, or the builders themselves before one comes. */
public final class HoldVisit {
    private static final String REFUSED = "The visit was not recorded.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public HoldVisit(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * A visit.
     *
     * @param stage the stage that was looked at; empty where it is none of the local list
     * @param who who looked, as typed
     * @param own whether it was the builders' own look
     * @param text what was looked at and said
     * @param scale what in the pictures tells the size
     * @param facing from where they look whither
     */
    public record Held(String stage, String who, boolean own, String text, String scale, String facing) {}

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param project the project
     * @param held the visit
     * @param pictures pictures that go with it
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome hold(Sent sent, String project, Held held, Pictures pictures, Optional<Instant> at) {
        if (pictures.refused().isPresent()) {
            return pictures.refused().get();
        }
        return ProjectDeed.decide(shop, sent, project, at, (definition, checks, when) -> {
            checks.text("who", held.who(), !held.own());
            checks.text("text", held.text(), false);
            checks.text("scale", held.scale(), false);
            checks.text("facing", held.facing(), false);
            if (!held.stage().isEmpty()
                    && definition.local().stage(held.stage()).isEmpty()) {
                checks.stop("stage", "\"" + held.stage() + "\"", "a stage of local.yaml, or none", "");
            }
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            return pictures.append(shop, sent, project, EntryKind.VISIT_HELD, payload(sent, project, held, when));
        });
    }

    private Value.Fields payload(Sent sent, String project, Held held, Instant when) {
        return Value.Fields.NONE
                .with("at", when.toString())
                .with("number", number(sent, project))
                .withUnlessEmpty("stage", held.stage())
                .withUnlessEmpty("who", held.who())
                .withUnlessEmpty("own", held.own() ? "yes" : "")
                .withUnlessEmpty("text", held.text())
                .withUnlessEmpty("scale", held.scale())
                .withUnlessEmpty("facing", held.facing());
    }

    /** The next number in the project, never given twice; what was sent before has the number that it has. */
    private long number(Sent sent, String project) {
        Optional<Entry> before = shop.seqOf(sent.client()).flatMap(shop::entry);
        return before.flatMap(e -> e.fields().whole("number"))
                .orElseGet(() -> 1
                        + shop.entries(1).stream()
                                .filter(e -> e.kind().equals(EntryKind.VISIT_HELD.key())
                                        && e.project().equals(project))
                                .mapToLong(e -> e.fields().whole("number").orElse(0L))
                                .max()
                                .orElse(0));
    }
}
