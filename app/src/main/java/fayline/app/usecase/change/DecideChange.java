package fayline.app.usecase.change;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.Signers;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lead decides about a change. An accepted one notes all that it touches and withdraws what was printed of what it makes otherwise.
 * For each part or joint of that which is begun, a deviation is raised in the same transaction: it is other than drawn from now on,
 * and what becomes of it is decided as of any deviation. Where structure is touched a second person agrees.
 */
public final class DecideChange {
    private static final String REFUSED = "The decision was not recorded.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public DecideChange(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is decided.
     *
     * @param accepted whether it is made
     * @param note why, and where structure is touched the engineering note
     * @param structural whether structure is touched, where that was not said before
     * @param second who agrees, where a second person is picked on the same screen; else empty
     */
    public record Decision(boolean accepted, String note, boolean structural, String second) {}

    /**
     * Records a decision with what follows from the definition now.
     *
     * @param sent who decides, under which id
     * @param change the entry that raised it
     * @param decision what
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome decide(Sent sent, long change, Decision decision, Optional<Instant> at) {
        return OnChange.decide(shop, sent, change, at, (d, found, checks, when) -> {
            check(checks, d, sent, found, decision);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            // What was sent before and is sent again says the same again.
            Optional<NewEntry> before = shop.seqOf(sent.client())
                    .flatMap(shop::entry)
                    .map(e -> Checks.entry(shop, sent, found.project(), EntryKind.CHANGE_DECIDED, e.fields()));
            if (before.isPresent()) {
                return shop.append(before.get());
            }
            if (!decision.accepted()) {
                return shop.append(Checks.entry(
                        shop, sent, found.project(), EntryKind.CHANGE_DECIDED, fields(found, decision, when)));
            }
            return accept(d, sent, found, decision, when);
        });
    }

    /**
     * Records a decision as it is told afterwards, with what it said then.
     *
     * @param sent who decided, under which id
     * @param change the entry that raised it
     * @param decision what
     * @param items what it touched
     * @param withdraws what it made otherwise
     * @param at when
     */
    public Outcome told(
            Sent sent,
            long change,
            Decision decision,
            List<String> items,
            List<Verdict.Withdrawn> withdraws,
            Instant at) {
        return OnChange.decide(shop, sent, change, Optional.of(at), (d, found, checks, when) -> {
            check(checks, d, sent, found, decision);
            return checks.problems().isEmpty()
                    ? shop.append(Checks.entry(
                            shop,
                            sent,
                            found.project(),
                            EntryKind.CHANGE_DECIDED,
                            listed(fields(found, decision, when), "", items, withdraws)))
                    : Outcome.refused(REFUSED, checks.problems());
        });
    }

    /**
     * A second person agrees to what was decided.
     *
     * @param sent who agrees, under which id
     * @param change the entry that raised it
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome agree(Sent sent, long change, Optional<Instant> at) {
        return OnChange.decide(shop, sent, change, at, (d, found, checks, when) -> {
            if (OnChange.isFresh(shop, sent) && found.stage() != Change.Stage.WAITS_FOR_SECOND) {
                checks.stop("change", "one that waits for no second person", "one that does", "");
            }
            if (!Signers.isOne(d, sent.by())) {
                checks.stop("second", sent.by(), "somebody whom the crew list lets sign", "");
            }
            found.verdict()
                    .filter(v -> v.by().equals(sent.by()))
                    .ifPresent(v -> checks.stop("second", "who decided it", "a second person", ""));
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            return shop.append(Checks.entry(
                    shop,
                    sent,
                    found.project(),
                    EntryKind.CHANGE_DECIDED,
                    Value.Fields.NONE
                            .with("change", change)
                            .with("at", when.toString())
                            .with(
                                    "decision",
                                    word(found.verdict()
                                            .filter(Verdict::accepted)
                                            .isPresent()))
                            .with("second", sent.by())));
        });
    }

    private void check(Checks checks, Definition d, Sent sent, Change found, Decision decision) {
        checks.text("note", decision.note(), sent.live());
        if (sent.live()) {
            Signers.check(shop, d, checks, "by", sent.by());
        }
        if (OnChange.isFresh(shop, sent)) {
            found.verdict()
                    .ifPresent(v -> checks.stop(
                            "change",
                            "one that " + v.by() + " decided about (entry " + v.seq() + ")",
                            "one that is open",
                            "raise another where something else is wanted"));
        }
        if (decision.second().isEmpty()) {
            return;
        }
        checks.person("second", decision.second());
        if (decision.second().equals(sent.by())) {
            checks.stop("second", "the same person twice", "a second person, who is not the first", "");
        } else if (sent.live() && !Signers.isOne(d, decision.second())) {
            checks.stop("second", decision.second(), "somebody whom the crew list lets sign", "");
        }
    }

    private Outcome accept(Definition d, Sent sent, Change found, Decision decision, Instant when) {
        Followed now = FollowChange.now(shop, d, found);
        List<Verdict.Withdrawn> withdraws = now.result().made().stream()
                .map(id -> new Verdict.Withdrawn(id, Followed.drawing(d, id)))
                .toList();
        List<NewEntry> entries = new ArrayList<>();
        entries.add(Checks.entry(
                shop,
                sent,
                found.project(),
                EntryKind.CHANGE_DECIDED,
                listed(fields(found, decision, when), d.hash(), now.result().items(), withdraws)));
        now.begun().forEach(made -> entries.add(deviation(sent, found, made, decision.structural(), when)));
        return shop.append(entries).get(0);
    }

    /** Opens the disposition of something begun that has none yet, as of something that was begun since the decision. */
    Outcome open(Sent sent, Change found, String made, Instant when) {
        return shop.append(deviation(sent, found, made, false, when));
    }

    private NewEntry deviation(Sent sent, Change found, String made, boolean structural, Instant when) {
        return Checks.entry(
                shop,
                sent.along(made),
                found.project(),
                EntryKind.DEVIATION_RAISED,
                Value.Fields.NONE
                        .with("about", found.project() + "/" + made)
                        .with("at", when.toString())
                        .with("text", "Made before change " + found.name() + ": " + found.what())
                        .with("change", found.seq())
                        .withUnlessEmpty("structural", found.structural() || structural ? "yes" : ""));
    }

    private static Value.Fields fields(Change found, Decision decision, Instant when) {
        return Value.Fields.NONE
                .with("change", found.seq())
                .with("at", when.toString())
                .with("decision", word(decision.accepted()))
                .withUnlessEmpty("note", decision.note())
                .withUnlessEmpty("structural", decision.structural() ? "yes" : "")
                .withUnlessEmpty("second", decision.second());
    }

    private static Value.Fields listed(
            Value.Fields f, String definition, List<String> items, List<Verdict.Withdrawn> withdraws) {
        Value.Fields all = f.withUnlessEmpty("definition", definition);
        if (!items.isEmpty()) {
            all = all.with("items", items);
        }
        return withdraws.isEmpty()
                ? all
                : all.with(
                        "withdraws",
                        new Value.Many(
                                withdraws.stream().map(w -> (Value) w.fields()).toList()));
    }

    private static String word(boolean accepted) {
        return accepted ? "accepted" : "refused";
    }
}
