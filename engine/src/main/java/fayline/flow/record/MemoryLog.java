package fayline.flow.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
            if (before == null) {
                Entry entry = Entry.next(head(), one);
                entries.add(entry);
                byClient.put(entry.client(), entry);
                answers.add(new Answer.Taken(entry.seq(), entry.hash()));
            } else {
                answers.add(answerTo(before, one));
            }
        }
        return List.copyOf(answers);
    }

    /** The answer to something sent under an id that an entry already has. */
    public static Answer answerTo(Entry before, NewEntry again) {
        return before.saysTheSameAs(again)
                ? new Answer.AlreadyThere(before.seq())
                : new Answer.Refused("the id " + again.client() + " stands at entry " + before.seq()
                        + " with other content; nothing was changed");
    }
}
