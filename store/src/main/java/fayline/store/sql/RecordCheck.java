package fayline.store.sql;

import fayline.flow.record.Chain;
import fayline.flow.record.Head;
import fayline.flow.record.KeptHead;
import fayline.flow.record.TreeHead;
import java.nio.file.Path;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/**
 * Checks the chain of a data folder, whether a program has it open or not. Reads one state of the database and writes
 * nothing.
 */
public final class RecordCheck {
    private RecordCheck() {}

    /**
     * Checks a folder.
     *
     * @param folder the data folder
     * @param outside a head that was kept elsewhere, where there is one
     * @throws StoreException if there is no record or it cannot be reached
     */
    public static Report check(Path folder, Optional<? extends KeptHead> outside) {
        return ReadOnly.ask(folder, db -> check(db, outside));
    }

    private static Report check(DSLContext db, Optional<? extends KeptHead> outside) {
        Chain chain = new Chain(outside);
        try {
            EntryRows.each(db, Long.MIN_VALUE, chain::next);
        } catch (DataAccessException e) {
            Optional<Chain.Fault> fault = chain.end();
            return new Report(
                    chain.head(),
                    chain.treeHead(),
                    Optional.of(fault.filter(f -> f.seq() <= chain.head().seq())
                            .orElse(new Chain.Fault(
                                    chain.head().seq() + 1, "the database cannot be read here: " + e.getMessage()))));
        }
        Optional<Chain.Fault> fault = chain.end();
        return new Report(chain.head(), chain.treeHead(), fault.isPresent() ? fault : againstTable(db, chain.head()));
    }

    /** Finds a tail that was cut without regard for the table beside the entries. */
    private static Optional<Chain.Fault> againstTable(DSLContext db, Head head) {
        Optional<Head> noted;
        try {
            noted = db.select(EntryRows.SEQ, EntryRows.field("hash", String.class))
                    .from(DSL.table(DSL.unquotedName("record_head")))
                    .fetchOptional(r -> new Head(r.value1(), r.value2()));
        } catch (DataAccessException e) {
            return Optional.of(new Chain.Fault(head.seq() + 1, "the noted head cannot be read: " + e.getMessage()));
        }
        if (noted.isPresent() && !noted.get().equals(head)) {
            return Optional.of(new Chain.Fault(
                    Math.min(head.seq(), noted.get().seq()) + 1,
                    "the record ends at entry " + head.seq() + ", the head noted beside it is entry "
                            + noted.get().seq() + ": entries are missing or were added by another hand"));
        }
        if (noted.isEmpty() && head.seq() > 0) {
            return Optional.of(new Chain.Fault(head.seq() + 1, "the head noted beside the entries is missing"));
        }
        return Optional.empty();
    }

    /**
     * What was found.
     *
     * @param head the head up to which the chain is sound
     * @param tree the same as a head of the tree
     * @param fault the first fault, where there is one
     */
    public record Report(Head head, TreeHead tree, Optional<Chain.Fault> fault) {
        /** What a chain was found to be, once every entry was given. */
        public static Report of(Chain chain) {
            return new Report(chain.head(), chain.treeHead(), chain.end());
        }
    }
}
