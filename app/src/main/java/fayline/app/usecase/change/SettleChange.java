package fayline.app.usecase.change;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Treatment;
import fayline.flow.record.change.Verdict;
import fayline.flow.record.payload.Value;
import fayline.flow.result.change.Reached;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The lead settles what an accepted change touches, thing by thing, and closes the change when nothing is left. A new revision counts
 * once it stands in the definition: the drawing is another one than that which was withdrawn, or the definition another than at the decision.
 */
public final class SettleChange {
    private final ShopRecord shop;

    /** On a shop's record. */
    public SettleChange(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What became of things.
     *
     * @param items the things, as {@code group/id}
     * @param how a word of {@link Treatment}
     * @param note why, or what was done
     * @param drawing the drawing from then on, where it is told afterwards; else that of the definition now
     */
    public record Settling(List<String> items, String how, String note, String drawing) {
        /** Copies the list. */
        public Settling {
            items = List.copyOf(items);
        }
    }

    /**
     * Records what became of things.
     *
     * @param sent who settles them, under which id
     * @param change the entry that raised the change
     * @param settling what became of which things
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome settle(Sent sent, long change, Settling settling, Optional<Instant> at) {
        return OnChange.decide(shop, sent, change, at, (d, found, checks, when) -> {
            OnChange.following(shop, d, sent, found, checks);
            check(checks, d, sent, found, settling);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("It was not settled.", checks.problems());
            }
            List<NewEntry> entries = new ArrayList<>();
            for (String item : settling.items()) {
                Sent own = entries.isEmpty() ? sent : sent.along(item);
                entries.add(entry(own, d, found, item, settling, when));
            }
            return shop.append(entries).get(0);
        });
    }

    private void check(Checks checks, Definition d, Sent sent, Change found, Settling settling) {
        Optional<Treatment> how = Treatment.of(settling.how());
        if (how.isEmpty()) {
            checks.stop("how", "\"" + settling.how() + "\"", "one of " + String.join(", ", Treatment.keys()), "");
        }
        checks.text(
                "note",
                settling.note(),
                sent.live() && how.filter(Treatment.REVISED::equals).isEmpty());
        if (settling.items().isEmpty()) {
            checks.stop("item", "nothing", "at least one thing that the change touches", "tick it");
        }
        if (OnChange.isFresh(shop, sent) && how.isPresent()) {
            Followed now = FollowChange.now(shop, d, found);
            settling.items().forEach(i -> check(checks, d, now, i, how.get()));
        }
    }

    private static void check(Checks checks, Definition d, Followed now, String item, Treatment how) {
        if (now.lines().stream().noneMatch(l -> l.reached().item().equals(item))) {
            checks.stop(
                    "item", "\"" + item + "\"", "something that " + now.change().name() + " touches", "");
        } else if (how == Treatment.DONE && isDesign(item)) {
            checks.stop(
                    "how",
                    "done, of " + item,
                    "of what stands in the definition: " + Treatment.REVISED.words() + ", or that it "
                            + Treatment.UNCHANGED.words(),
                    "");
        } else if (how == Treatment.REVISED) {
            now.change().verdict().ifPresent(v -> revised(checks, d, v, item));
        }
    }

    private static void revised(Checks checks, Definition d, Verdict verdict, String item) {
        String made = item.substring(item.indexOf('/') + 1);
        Optional<String> old = verdict.withdraws().stream()
                .filter(w ->
                        item.equals(Change.itemOf(w.made())) && !w.drawing().isEmpty())
                .map(Verdict.Withdrawn::drawing)
                .findFirst();
        if (old.filter(Followed.drawing(d, made)::equals).isPresent()) {
            checks.stop(
                    "item",
                    made + " still to drawing " + old.get(),
                    "the drawing with its new revision in the definition",
                    "edit the part's drawing first, or say that it stays as it is, and why");
        } else if (old.isEmpty() && d.hash().equals(verdict.definition())) {
            checks.stop(
                    "item",
                    "the definition as it was when the change was decided",
                    "one that holds the change",
                    "edit it first, or say that it stays as it is, and why");
        }
    }

    private static boolean isDesign(String item) {
        return item.startsWith(Reached.Group.MADE.key() + "/") || item.startsWith(Reached.Group.DESIGN.key() + "/");
    }

    private NewEntry entry(Sent own, Definition d, Change found, String item, Settling settling, Instant when) {
        String drawing = item.startsWith(Reached.Group.MADE.key() + "/")
                ? Followed.drawing(d, item.substring(item.indexOf('/') + 1))
                : "";
        return Checks.entry(
                shop,
                own,
                found.project(),
                EntryKind.CHANGE_SETTLED,
                Value.Fields.NONE
                        .with("change", found.seq())
                        .with("at", when.toString())
                        .with("item", item)
                        .with("how", settling.how())
                        .withUnlessEmpty("note", settling.note())
                        .withUnlessEmpty("drawing", own.live() ? drawing : settling.drawing()));
    }

    /**
     * Opens the disposition of something that was begun before its new revision was in and has none.
     *
     * @param sent who opens it, under which id
     * @param change the entry that raised the change
     * @param made the part or joint
     */
    public Outcome open(Sent sent, long change, String made) {
        return OnChange.decide(shop, sent, change, Optional.empty(), (d, found, checks, when) -> {
            OnChange.following(shop, d, sent, found, checks);
            boolean lacks = FollowChange.now(shop, d, found).disposals().stream()
                    .anyMatch(x -> x.made().equals(made) && x.deviation().isEmpty());
            if (OnChange.isFresh(shop, sent) && !lacks) {
                checks.stop("made", "\"" + made + "\"", "something begun without a disposition", "");
            }
            return checks.problems().isEmpty()
                    ? new DecideChange(shop).open(sent, found, made, when)
                    : Outcome.refused("No disposition was opened.", checks.problems());
        });
    }

    /**
     * Closes a change.
     *
     * @param sent who closes it, under which id
     * @param change the entry that raised it
     * @param note what is to be said; may be empty
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome close(Sent sent, long change, String note, Optional<Instant> at) {
        return OnChange.decide(shop, sent, change, at, (d, found, checks, when) -> {
            OnChange.following(shop, d, sent, found, checks);
            checks.text("note", note, false);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(found.name() + " cannot be closed yet.", checks.problems());
            }
            List<String> missing = OnChange.isFresh(shop, sent)
                    ? FollowChange.now(shop, d, found).missing()
                    : List.of();
            if (!missing.isEmpty()) {
                return Outcome.refused(found.name() + " cannot be closed yet. " + String.join(" ", missing));
            }
            return shop.append(Checks.entry(
                    shop,
                    sent,
                    found.project(),
                    EntryKind.CHANGE_CLOSED,
                    Value.Fields.NONE
                            .with("change", found.seq())
                            .with("at", when.toString())
                            .withUnlessEmpty("note", note)));
        });
    }
}
