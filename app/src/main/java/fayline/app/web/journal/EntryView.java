package fayline.app.web.journal;

import fayline.app.usecase.journal.Difference;
import java.util.List;

/**
 * One entry.
 *
 * @param seq its number
 * @param says what happened
 * @param facts who, when, for what, in rows of name and value
 * @param changes what it changed
 * @param fields its own fields as they stand there, in rows of name and value
 * @param later numbers of entries that correct it
 * @param erased that it was erased, in a sentence; empty where it was not
 * @param erasedBy number of the entry that says so; 0 where none does
 * @param mayErase whether something in it is personal and may be erased here
 * @param link where what it is about is shown; empty for nowhere
 * @param hashes its hash, the one before, that of its payload
 * @param proof hashes that prove it in the tree
 * @param proofOver what the proof is over
 * @param first whether there is none before
 * @param last whether there is none after
 */
public record EntryView(
        long seq,
        String says,
        List<Row> facts,
        List<Difference> changes,
        List<Row> fields,
        List<Long> later,
        String erased,
        long erasedBy,
        boolean mayErase,
        String link,
        List<Row> hashes,
        List<String> proof,
        String proofOver,
        boolean first,
        boolean last) {
    /** Copies the lists. */
    public EntryView {
        facts = List.copyOf(facts);
        changes = List.copyOf(changes);
        fields = List.copyOf(fields);
        later = List.copyOf(later);
        hashes = List.copyOf(hashes);
        proof = List.copyOf(proof);
    }

    /**
     * A name and a value.
     *
     * @param name the name
     * @param value the value
     */
    public record Row(String name, String value) {}
}
