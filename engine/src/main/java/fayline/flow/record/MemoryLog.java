package fayline.flow.record;

import fayline.flow.record.erasure.Erasable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;

/** A record that lasts as long as the program: for reading a bare folder, and for trying entries before they are kept. */
public final class MemoryLog implements EntryLog {
    private final List<Entry> entries;
    private final Map<String, Entry> byClient = new HashMap<>();

    /** An empty record. */
    public MemoryLog() {
        this(List.of());
    }

    /**
     * A record that begins with given entries.
     *
     * @param entries a whole chain from its first entry
     */
    public MemoryLog(List<Entry> entries) {
        this.entries = new ArrayList<>(entries);
        entries.forEach(e -> byClient.put(e.client(), e));
    }

    @Override
    public synchronized Head head() {
        return entries.isEmpty() ? Head.EMPTY : entries.get(entries.size() - 1).head();
    }

    @Override
    public synchronized List<Entry> read(long fromSeq) {
        int from = (int) Math.min(Math.max(fromSeq - 1, 0), entries.size());
        return List.copyOf(entries.subList(from, entries.size()));
    }

    @Override
    public synchronized List<Answer> append(List<NewEntry> fresh) {
        List<Answer> answers = new ArrayList<>();
        for (NewEntry one : fresh) {
            Entry before = byClient.get(one.client());
            Optional<String> refused = refuses(one, this::entry);
            if (before != null) {
                answers.add(answerTo(before, one));
            } else if (refused.isPresent()) {
                answers.add(new Answer.Refused(refused.get()));
            } else {
                Entry entry = Entry.next(head(), one);
                put(entry);
                entry.erases().flatMap(this::entry).ifPresent(e -> put(e.emptied()));
                answers.add(new Answer.Taken(entry.seq(), entry.hash()));
            }
        }
        return List.copyOf(answers);
    }

    private void put(Entry entry) {
        if (entry.seq() > entries.size()) {
            entries.add(entry);
        } else {
            entries.set((int) entry.seq() - 1, entry);
        }
        byClient.put(entry.client(), entry);
    }

    /**
     * Why an entry will not be taken by any record; empty where it may be.
     *
     * @param fresh what was sent
     * @param entry the entries that stand there
     */
    public static Optional<String> refuses(NewEntry fresh, LongFunction<Optional<Entry>> entry) {
        if (!fresh.kind().equals(Erasable.ERASED)) {
            return Optional.empty();
        }
        long named = fresh.payload().whole("entry").orElse(0L);
        Optional<Entry> old = named < 1 ? Optional.empty() : entry.apply(named);
        if (old.isEmpty()) {
            return Optional.of("Nothing was erased: there is no entry " + named + ".");
        }
        if (!Erasable.isKind(old.get().kind())) {
            return Optional.of("Nothing was erased: entry " + named + " is of a kind that is never erased.");
        }
        return old.get().isEmptied()
                ? Optional.of("Nothing was erased: entry " + named + " was erased before.")
                : Optional.empty();
    }

    @Override
    public synchronized Optional<Entry> entry(long seq) {
        return seq < 1 || seq > entries.size() ? Optional.empty() : Optional.of(entries.get((int) seq - 1));
    }

    /** The answer to something sent under an id that an entry already has. */
    public static Answer answerTo(Entry before, NewEntry again) {
        return before.saysTheSameAs(again)
                ? new Answer.AlreadyThere(before.seq())
                : new Answer.Refused("the id " + again.client() + " stands at entry " + before.seq()
                        + " with other content; nothing was changed");
    }
}
