package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Takes what is personal out of an entry and out of every correction of it, for good. That it was done, by whom, when and why
 * is an entry of its own, which also says again what was not personal.
 */
public final class EraseEntry {
    /** Shorter words stand everywhere. */
    private static final int SHORTEST = 8;

    private final ShopRecord shop;

    /** In a shop's record. */
    public EraseEntry(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Erases.
     *
     * @param sent who sends it under which id
     * @param entry sequence number of the entry
     * @param why why, in words that follow "because"
     */
    public Outcome erase(Sent sent, long entry, String why) {
        return shop.deciding(() -> {
            Optional<Entry> before = shop.seqOf(sent.client()).flatMap(shop::entry);
            if (before.isPresent()) {
                return before.get().erases().filter(e -> e == entry).isPresent()
                        ? Outcome.already(before.get().seq())
                        : Outcome.refused("Nothing was erased: this was sent before for something else.");
            }
            Optional<Entry> found = shop.entry(entry);
            if (found.isEmpty()) {
                return Outcome.refused("Nothing was erased: there is no entry " + entry + ".");
            }
            return decide(sent, found.get(), why);
        });
    }

    private Outcome decide(Sent sent, Entry wrong, String why) {
        Optional<String> refused = stays(wrong);
        if (refused.isPresent()) {
            return Outcome.refused("Nothing was erased: " + refused.get());
        }
        List<Definition> definitions = wrong.project().isEmpty()
                ? shop.definitions()
                : shop.definition(wrong.project()).stream().toList();
        if (definitions.isEmpty()) {
            return Outcome.refused("Nothing was erased: the project of entry " + wrong.seq() + " is not in this shop.");
        }
        Checks checks = new Checks(definitions.get(0));
        checks.person("by", sent.by());
        checks.text("why", why, true);
        if (!checks.problems().isEmpty()) {
            return Outcome.refused("Nothing was erased.", checks.problems());
        }
        List<NewEntry> entries = new ArrayList<>();
        for (Entry e : withCorrections(wrong)) {
            entries.add(erasing(sent, e, wrong.kind(), because(why)));
        }
        Value.Fields said = wrong.fields();
        List<Outcome> outcomes = shop.append(entries);
        Optional<Outcome> failed = outcomes.stream().filter(o -> !o.stands()).findFirst();
        return failed.orElseGet(() -> withElsewhere(outcomes.get(0), said));
    }

    /** Says where else the same words stand: a history file that was read in, or what was told of a week. */
    private Outcome withElsewhere(Outcome done, Value.Fields said) {
        List<String> words = Stream.of("text", "title", "name", "label")
                .map(said::text)
                .filter(w -> w.length() >= SHORTEST)
                .map(w -> new Value.Text(w).canonical())
                .map(w -> w.substring(1, w.length() - 1))
                .toList();
        List<String> where = shop.entries(1).stream()
                .filter(e -> words.stream().anyMatch(e.payload()::contains))
                .map(e -> String.valueOf(e.seq()))
                .toList();
        return where.isEmpty()
                ? done
                : done.saying("The same words still stand in " + (where.size() == 1 ? "entry " : "entries ")
                        + String.join(", ", where) + ".");
    }

    /** Why nothing of an entry may be erased; empty where something may. */
    private Optional<String> stays(Entry e) {
        if (e.isEmptied()) {
            return Optional.of("entry " + e.seq() + " was erased before.");
        }
        if (isCorrection(e)) {
            return Optional.of("entry " + e.seq() + " corrects entry "
                    + e.fields().whole("entry").orElse(0L)
                    + ". Erase that one; what corrects it goes with it.");
        }
        if (!Erasable.isKind(e.kind())) {
            return Optional.of(
                    "entry " + e.seq()
                            + " is of a kind that stays: work, readings, signatures, lots and the definition are never erased.");
        }
        return Erasable.kept(e.kind(), e.fields(), e.kind()).isPresent()
                ? Optional.empty()
                : Optional.of("entry " + e.seq() + " holds nothing that may be erased: of what others work by only"
                        + " pictures are.");
    }

    /** The reason as it follows "because", also where it was typed with that word. */
    private static String because(String why) {
        return why.strip().replaceFirst("(?i)^because\\s+", "");
    }

    private static boolean isCorrection(Entry e) {
        return e.kind().equals(EntryKind.CORRECTED.key());
    }

    /** The entry, then all that corrects it or a correction of it, in their order. */
    private List<Entry> withCorrections(Entry root) {
        List<Entry> all = new ArrayList<>(List.of(root));
        List<Long> named = new ArrayList<>(List.of(root.seq()));
        for (Entry e : shop.entries(root.seq() + 1)) {
            if (isCorrection(e) && named.contains(e.fields().whole("entry").orElse(0L))) {
                named.add(e.seq());
                all.add(e);
            }
        }
        return all;
    }

    private NewEntry erasing(Sent sent, Entry e, String kind, String why) {
        Value.Fields kept = Erasable.kept(e.kind(), e.fields(), kind).orElse(e.fields());
        return Checks.entry(
                shop,
                isCorrection(e) ? sent.along("correction " + e.seq()) : sent,
                e.project(),
                EntryKind.ERASED,
                Value.Fields.NONE
                        .with("entry", e.seq())
                        .with("why", why)
                        .with("at", shop.minute().toString())
                        .with("kept", kept));
    }
}
