package fayline.store.sql;

import fayline.flow.record.Chain;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.Head;
import fayline.flow.record.KeptHead;
import fayline.flow.record.TreeHead;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.jooq.impl.DSL;

/**
 * Checks the chain of a data folder and the files that its entries name, whether a program has it open or not. Reads one state of
 * the database and writes nothing.
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
        return ReadOnly.ask(folder, db -> check(db, outside, KeptFiles.of(folder, db)));
    }

    private static Report check(DSLContext db, Optional<? extends KeptHead> outside, EntryFiles files) {
        Chain chain = new Chain(outside);
        NamedFiles named = new NamedFiles(files);
        try {
            EntryRows.each(db, Long.MIN_VALUE, e -> {
                chain.next(e);
                if (chain.isSound()) {
                    named.next(e);
                }
            });
        } catch (DataAccessException e) {
            Optional<Chain.Fault> fault = chain.end();
            return Report.of(
                    chain,
                    Optional.of(fault.filter(f -> f.seq() <= chain.reached())
                            .orElse(new Chain.Fault(
                                    chain.reached() + 1, "the database cannot be read here: " + e.getMessage()))),
                    named);
        }
        Optional<Chain.Fault> fault = chain.end();
        return Report.of(chain, fault.isPresent() ? fault : againstTable(db, chain.head()), named);
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
     * @param files how many files the entries up to there name
     * @param strays how many files lie there that none of them names: harmless, as a power cut can leave them
     */
    public record Report(Head head, TreeHead tree, Optional<Chain.Fault> fault, int files, int strays) {
        /**
         * What a chain and its files were found to be, once every entry was given.
         *
         * @param chain the chain
         * @param fault its first fault, where there is one
         * @param named the files that its entries name
         */
        static Report of(Chain chain, Optional<Chain.Fault> fault, NamedFiles named) {
            Optional<Chain.Fault> first = Stream.concat(fault.stream(), named.fault().stream())
                    .min(Comparator.comparingLong(Chain.Fault::seq));
            return new Report(chain.head(), chain.treeHead(), first, named.count(), named.strays());
        }
    }
}
