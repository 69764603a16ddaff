package fayline.app.usecase.journal;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.SignedHead;
import fayline.flow.record.TreeHead;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sheets of paper on which the head of the record is kept outside the machine, numbered from 1. That a sheet was printed is an
 * entry itself, so that a record from which an end was cut also lacks a sheet that lies in the folder.
 */
public final class Sheets {
    private static final String BOOK = "book";
    private final ShopRecord shop;
    private final RecordTree tree;
    private final Signer signer;

    /** Signs with the shop's key. */
    @FunctionalInterface
    public interface Signer {
        /** Signs a head taken at a moment. */
        SignedHead sign(TreeHead head, Instant at);
    }

    /**
     * Of a shop's record.
     *
     * @param shop the record
     * @param tree the tree over its entries
     * @param signer signs a head with the shop's key
     */
    public Sheets(ShopRecord shop, RecordTree tree, Signer signer) {
        this.shop = shop;
        this.tree = tree;
        this.signer = signer;
    }

    /**
     * What was printed with a head on it, where that is more than a record sheet.
     *
     * @param project the project
     * @param of the part, joint or assembly whose book it is; empty for the whole aircraft
     */
    public record PrintedBook(String project, String of) {}

    /**
     * One sheet.
     *
     * @param number its number, from 1
     * @param seq the entry that tells of it
     * @param by who printed it
     * @param head the head on it
     * @param lastHash the hash of the last entry under it
     * @param before the head on the sheet before; empty on the first
     * @param book the book on whose cover the head stands; empty for a sheet alone
     */
    public record Sheet(
            long number,
            long seq,
            String by,
            SignedHead head,
            String lastHash,
            Optional<TreeHead> before,
            Optional<PrintedBook> book) {}

    /** Every sheet, the first first. */
    public List<Sheet> all() {
        List<Sheet> sheets = new ArrayList<>();
        Optional<TreeHead> before = Optional.empty();
        for (Entry e : tree.sheets()) {
            Value.Fields f = e.fields();
            SignedHead head = SignedHead.of(f);
            Optional<PrintedBook> book = f.text("what").equals(BOOK)
                    ? Optional.of(new PrintedBook(e.project(), f.text("of")))
                    : Optional.empty();
            sheets.add(new Sheet(sheets.size() + 1L, e.seq(), e.by(), head, f.text("hash"), before, book));
            before = Optional.of(head.head());
        }
        return sheets;
    }

    /** One sheet by its number. */
    public Optional<Sheet> sheet(long number) {
        List<Sheet> all = all();
        return number >= 1 && number <= all.size() ? Optional.of(all.get((int) number - 1)) : Optional.empty();
    }

    /**
     * Makes the next sheet of the record as it stands, and records that.
     *
     * @param sent who sends it under which id
     */
    public Outcome print(Sent sent) {
        return print(sent, Optional.empty());
    }

    /**
     * The same on the cover of a book.
     *
     * @param sent who sends it under which id
     * @param book what the book is of; empty for a sheet alone
     */
    public Outcome print(Sent sent, Optional<PrintedBook> book) {
        return shop.deciding(() -> {
            if (shop.knows(sent.client())) {
                return Outcome.already(shop.seqOf(sent.client()).orElse(0L));
            }
            RecordTree.End end = tree.end();
            if (end.tree().seq() == 0) {
                return Outcome.refused("The record is empty: there is no head to print yet.");
            }
            Value.Fields payload = signer.sign(end.tree(), shop.now())
                    .fields()
                    .with("number", tree.sheets().size() + 1L)
                    .with("hash", end.hash());
            Value.Fields told = book.map(b -> payload.with("what", BOOK).withUnlessEmpty("of", b.of()))
                    .orElse(payload);
            return shop.append(new NewEntry(
                    sent.client(),
                    sent.by(),
                    "",
                    shop.now(),
                    book.map(PrintedBook::project).orElse(""),
                    EntryKind.SHEET_PRINTED.key(),
                    told,
                    List.of()));
        });
    }
}
