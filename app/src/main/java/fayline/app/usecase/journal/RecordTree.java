package fayline.app.usecase.journal;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.TreeHead;
import fayline.flow.record.proof.Digest;
import fayline.flow.record.proof.HashTree;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** The tree over the hashes of a record's entries, and the sheets among them, extended by what came since it was asked last. */
public final class RecordTree {
    private final ShopRecord shop;
    private final HashTree tree = new HashTree();
    private final List<Entry> sheets = new ArrayList<>();
    private String last = Entry.NO_PREVIOUS;

    /** Of a shop's record. */
    public RecordTree(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What proves that an entry stands in the record, RFC 9162 section 2.1.3.
     *
     * @param path hashes from the entry up to below the root
     * @param size how many entries the proof is over
     * @param root root of the tree over them
     */
    public record Proven(List<Digest> path, int size, Digest root) {
        /** Copies the list. */
        public Proven {
            path = List.copyOf(path);
        }
    }

    /**
     * Where the record ends.
     *
     * @param tree as a head of the tree
     * @param hash the hash of the last entry
     */
    public record End(TreeHead tree, String hash) {}

    /** Where the record ends now. */
    public synchronized End end() {
        extend();
        return new End(TreeHead.of(tree.size(), tree.root()), last);
    }

    /**
     * The proof of an entry.
     *
     * @param seq from 1 to the last
     * @throws IndexOutOfBoundsException if there is no such entry
     */
    public synchronized Proven prove(long seq) {
        extend();
        return new Proven(tree.inclusion((int) seq - 1, tree.size()), tree.size(), tree.root());
    }

    /**
     * What proves that the record begins with what somebody saw of it, RFC 9162 section 2.1.4.
     *
     * @param size how many entries there are
     * @param root root of the tree over them
     * @param before root of the tree over those that were seen
     * @param path hashes that lead from one to the other
     */
    public record Grown(int size, Digest root, Digest before, List<Digest> path) {
        /** Copies the list. */
        public Grown {
            path = List.copyOf(path);
        }
    }

    /**
     * The record as it is now beside what somebody saw of it.
     *
     * @param seen how many entries they saw; more than there are counts as all, fewer than none as none
     */
    public synchronized Grown since(long seen) {
        extend();
        int first = (int) Math.max(0, Math.min(seen, tree.size()));
        return new Grown(tree.size(), tree.root(), tree.root(first), tree.consistency(first, tree.size()));
    }

    /** The entries that tell of sheets, in order. */
    synchronized List<Entry> sheets() {
        extend();
        return List.copyOf(sheets);
    }

    private void extend() {
        for (Entry e : shop.entries(tree.size() + 1L)) {
            tree.add(HexFormat.of().parseHex(e.hash()));
            last = e.hash();
            if (e.kind().equals(EntryKind.SHEET_PRINTED.key())) {
                sheets.add(e);
            }
        }
    }
}
