package fayline.app.usecase.book;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.MemoryLog;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;

/** The record as it was up to an entry. */
public final class PastRecord {
    private PastRecord() {}

    /**
     * The record up to an entry, its clock at that entry.
     *
     * @param shop the record
     * @param seq the last entry that counts, at least 1
     * @throws IllegalArgumentException if there is no such entry
     */
    public static ShopRecord upTo(ShopRecord shop, long seq) {
        List<Entry> all = shop.entries(1);
        if (seq < 1 || seq > all.size()) {
            throw new IllegalArgumentException("entry " + seq + " of a record of " + all.size());
        }
        return of(all.subList(0, (int) seq), shop);
    }

    private static ShopRecord of(List<Entry> entries, ShopRecord shop) {
        Instant last = entries.get(entries.size() - 1).taken();
        return new ShopRecord(new MemoryLog(entries), shop.files(), Clock.fixed(last, ZoneOffset.UTC));
    }
}
