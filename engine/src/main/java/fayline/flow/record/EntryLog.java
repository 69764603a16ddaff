package fayline.flow.record;

import java.util.List;
import java.util.Optional;

/**
 * The record, wherever it is kept. Entries are added at its end and never changed. Implementations are safe to call from
 * several threads.
 */
public interface EntryLog {
    /** Where the record ends now. */
    Head head();

    /**
     * Entries in their order.
     *
     * @param fromSeq the first wanted, from 1
     * @return every entry from there to the head
     */
    List<Entry> read(long fromSeq);

    /** The entry at a place; empty where there is none. */
    default Optional<Entry> entry(long seq) {
        return seq < 1 ? Optional.empty() : read(seq).stream().findFirst();
    }

    /**
     * Adds entries, all or none of those that are not refused, in one transaction.
     *
     * @param fresh the entries in order
     * @return an answer for each, in order; where one is {@link Answer.Unknown}, every one is that would have been taken
     */
    List<Answer> append(List<NewEntry> fresh);

    /** Adds one entry. */
    default Answer append(NewEntry fresh) {
        return append(List.of(fresh)).get(0);
    }

    /** What became of an entry that was sent. */
    sealed interface Answer permits Answer.Taken, Answer.AlreadyThere, Answer.Refused, Answer.Unknown {
        /** Whether the entry now stands in the record. */
        default boolean stands() {
            return this instanceof Taken || this instanceof AlreadyThere;
        }

        /**
         * It stands in the record now.
         *
         * @param seq its place
         * @param hash its hash
         */
        record Taken(long seq, String hash) implements Answer {}

        /**
         * It stood there before: sent again under the same id with the same body.
         *
         * @param seq its place
         */
        record AlreadyThere(long seq) implements Answer {}

        /**
         * It will not be taken as it is.
         *
         * @param reason why, in a sentence
         */
        record Refused(String reason) implements Answer {}

        /**
         * It may or may not stand there; sending it again under the same id tells.
         *
         * @param reason what went wrong, in a sentence
         */
        record Unknown(String reason) implements Answer {}
    }
}
