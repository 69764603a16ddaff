package fayline.app.usecase.book;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Who was signed in at an entry, as the entries before it tell. */
final class SignInLog {
    private final List<Entry> entries;

    SignInLog(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** The last sign-in of the author of an entry before it, if no sign-out stands between. */
    Optional<Long> under(long entry) {
        Map<String, Long> in = new HashMap<>();
        for (Entry e : entries) {
            if (e.seq() == entry) {
                return Optional.ofNullable(in.get(e.by()));
            }
            if (e.kind().equals(EntryKind.SIGNED_IN.key())) {
                in.put(e.fields().text("person"), e.seq());
            } else if (e.kind().equals(EntryKind.SIGNED_OUT.key())) {
                in.remove(e.fields().text("person"));
            }
        }
        return Optional.empty();
    }
}
