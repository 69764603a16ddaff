package fayline.app.usecase.journal;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Entries to be read, the newest first, and one of them with what it changed and what proves it. */
public final class Journal {
    private final ShopRecord shop;
    private final RecordTree tree;

    /**
     * Of a shop's record.
     *
     * @param shop the record
     * @param tree the tree over its entries
     */
    public Journal(ShopRecord shop, RecordTree tree) {
        this.shop = shop;
        this.tree = tree;
    }

    /**
     * Some entries.
     *
     * @param entries the newest first
     * @param further the sequence number below which there are more; 0 for none
     */
    public record Leaf(List<Entry> entries, long further) {
        /** Copies the list. */
        public Leaf {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Entries below one, the newest first.
     *
     * @param below only sequence numbers below this one; 0 for from the last
     * @param kinds only these kinds; none for all
     * @param text only entries in whose author, project or payload this stands, in small or capital letters; empty for all
     * @param most how many
     */
    public Leaf leaf(long below, List<EntryKind> kinds, String text, int most) {
        List<String> keys = kinds.stream().map(EntryKind::key).toList();
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        long head = shop.state().head().seq();
        long from = below > 0 ? Math.min(below - 1, head) : head;
        // Where nothing is sought, no more is read than is shown.
        boolean seeks = !keys.isEmpty() || !wanted.isEmpty();
        long first = seeks ? 1 : Math.max(1, from - most);
        List<Entry> all = shop.entries(first);
        List<Entry> found = new ArrayList<>();
        for (long seq = from; seq >= first; seq--) {
            Entry e = all.get((int) (seq - first));
            if ((keys.isEmpty() || keys.contains(e.kind())) && holds(e, wanted)) {
                if (found.size() == most) {
                    return new Leaf(found, seq + 1);
                }
                found.add(e);
            }
        }
        return new Leaf(found, 0);
    }

    private static boolean holds(Entry e, String wanted) {
        return wanted.isEmpty()
                || (e.by() + " " + e.project() + " " + e.kind() + " " + e.payload())
                        .toLowerCase(Locale.ROOT)
                        .contains(wanted);
    }

    /**
     * One entry with what stands around it.
     *
     * @param entry the entry
     * @param changes what it changed, each before and after; empty where it only adds
     * @param laterCorrections sequence numbers of later entries that correct it
     * @param mayErase whether something in it is personal and still stands there
     * @param proof what proves that it stands in the record
     */
    public record Shown(
            Entry entry,
            List<Difference> changes,
            List<Long> laterCorrections,
            boolean mayErase,
            RecordTree.Proven proof) {
        /** Copies the lists. */
        public Shown {
            changes = List.copyOf(changes);
            laterCorrections = List.copyOf(laterCorrections);
        }
    }

    /** One entry, where there is one. */
    public Optional<Shown> entry(long seq) {
        List<Entry> all = shop.entries(1);
        if (seq < 1 || seq > all.size()) {
            return Optional.empty();
        }
        Entry entry = all.get((int) seq - 1);
        return Optional.of(new Shown(
                entry,
                changes(entry, all),
                all.stream()
                        .filter(e ->
                                isCorrection(e) && e.fields().whole("entry").orElse(0L) == seq)
                        .map(Entry::seq)
                        .toList(),
                !entry.isEmptied()
                        && !isCorrection(entry)
                        && Erasable.kept(entry.kind(), entry.fields(), entry.kind())
                                .isPresent(),
                tree.prove(seq)));
    }

    private static boolean isCorrection(Entry e) {
        return e.kind().equals(EntryKind.CORRECTED.key());
    }

    private static List<Difference> changes(Entry entry, List<Entry> all) {
        if (isCorrection(entry)) {
            return corrected(entry, all);
        }
        if (entry.kind().equals(EntryKind.FILE_SAVED.key())) {
            Value.Fields f = entry.fields();
            String before =
                    earlier(entry, all).map(b -> b.fields().text("text")).orElse("");
            return Difference.ofLines(before, f.text("text"));
        }
        return List.of();
    }

    /** The last save of the same file before. */
    private static Optional<Entry> earlier(Entry entry, List<Entry> all) {
        Value.Fields f = entry.fields();
        for (int i = (int) entry.seq() - 2; i >= 0; i--) {
            Entry e = all.get(i);
            if (e.kind().equals(entry.kind())
                    && e.project().equals(entry.project())
                    && e.fields().text("path").equals(f.text("path"))
                    && e.fields().text("scope").equals(f.text("scope"))) {
                return Optional.of(e);
            }
        }
        return Optional.empty();
    }

    private static List<Difference> corrected(Entry entry, List<Entry> all) {
        Value.Fields f = entry.fields();
        long named = f.whole("entry").orElse(0L);
        if (named < 1 || named > all.size()) {
            return List.of();
        }
        // Corrections of one entry lie over each other: what stood before is the entry with the earlier ones laid over
        // it.
        long first = rootOf(all, named);
        Value.Fields before = all.get((int) first - 1).fields();
        for (Entry e : all.subList((int) first, (int) entry.seq() - 1)) {
            if (isCorrection(e) && rootOf(all, e.seq()) == first) {
                before = before.overlaidBy(e.fields().inner("with"));
            }
        }
        List<Difference> changes = new ArrayList<>();
        for (Map.Entry<String, Value> with : f.inner("with").fields().entrySet()) {
            Value was = before.fields().get(with.getKey());
            changes.add(new Difference(with.getKey(), shown(was), shown(with.getValue())));
        }
        return changes;
    }

    /** The entry that a correction, or a correction of a correction, names in the end. */
    private static long rootOf(List<Entry> all, long seq) {
        long at = seq;
        while (at >= 1 && at <= all.size() && isCorrection(all.get((int) at - 1))) {
            at = all.get((int) at - 1).fields().whole("entry").orElse(0L);
        }
        return at;
    }

    private static String shown(@Nullable Value value) {
        if (value == null) {
            return "";
        }
        return value instanceof Value.Text t ? t.text() : value.canonical();
    }
}
