package fayline.app.usecase.people;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import java.util.List;

/** Tells the record what was decided about people. No secret ever passes through here. */
final class Notices {
    private static final int LONGEST = 200;
    private final ShopRecord record;

    Notices(ShopRecord record) {
        this.record = record;
    }

    /**
     * Adds an entry about what is to be done.
     *
     * @param kind one of those about people
     * @param by who did it; empty where nobody known did
     * @param fields names and values in turn; empty values are left out
     * @throws DeniedException if it cannot be kept: then what it tells of must not happen
     */
    void tell(EntryKind kind, String by, String... fields) {
        add("This cannot be recorded now, so it is not done. ", kind, by, fields);
    }

    /**
     * Adds an entry about what was taken away and holds already.
     *
     * @param kind one of those about people
     * @param by who did it; empty where nobody known did
     * @param fields names and values in turn; empty values are left out
     * @throws DeniedException if it cannot be kept; what was done stays done
     */
    void tellDone(EntryKind kind, String by, String... fields) {
        add("This is done, but it cannot be recorded now. ", kind, by, fields);
    }

    private void add(String otherwise, EntryKind kind, String by, String... fields) {
        Value.Fields told = Value.Fields.NONE;
        for (int i = 0; i < fields.length; i += 2) {
            told = told.withUnlessEmpty(fields[i], plain(fields[i + 1]));
        }
        NewEntry fresh = new NewEntry(Sent.freshId(), by, "", record.now(), "", kind.key(), told, List.of());
        Outcome outcome = record.append(fresh);
        if (!outcome.stands()) {
            throw DeniedException.later(otherwise + outcome.sentence(), 5);
        }
    }

    /** Text from outside, cut to a line of bearable length, without what cannot be written. */
    private static String plain(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints()
                .filter(c -> !Character.isISOControl(c) && (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE))
                .limit(LONGEST)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }
}
