package fayline.flow.record.inspect;

import fayline.flow.record.payload.Photo;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing that a visit found, with what came of it.
 *
 * @param seq its entry
 * @param number its number, as {@code 2.1}: the first of the second visit
 * @param visit the visit's entry
 * @param about the part or joint, {@code project/made}
 * @param at when
 * @param by who entered it
 * @param text what is wrong, as typed
 * @param photos pictures in order
 * @param mended how it was put right, oldest first
 * @param signed what was said of that, oldest first
 */
public record FoundFault(
        long seq,
        String number,
        long visit,
        String about,
        Instant at,
        String by,
        String text,
        List<Photo> photos,
        List<Step> mended,
        List<Step> signed) {
    /** Copies the lists. */
    public FoundFault {
        photos = List.copyOf(photos);
        mended = List.copyOf(mended);
        signed = List.copyOf(signed);
    }

    /**
     * One step of what came of it.
     *
     * @param seq its entry
     * @param at when
     * @param by who entered it
     * @param who who signed, as typed, where it was somebody else; empty otherwise
     * @param accepted whether it was accepted; true for a mending
     * @param text what was done or said
     * @param photos pictures in order
     */
    public record Step(long seq, Instant at, String by, String who, boolean accepted, String text, List<Photo> photos) {
        /** Copies the list. */
        public Step {
            photos = List.copyOf(photos);
        }
    }

    /** Whether it still holds what depends on it: it is not mended, or nobody has accepted the last mending. */
    public boolean isOpen() {
        return lastMending().isEmpty() || accepted().isEmpty();
    }

    /** Whether it is mended, and only the signature is missing. */
    public boolean waitsForSignature() {
        return lastMending().isPresent() && isOpen() && signed.stream().noneMatch(this::isAfterMending);
    }

    /** The last mending. */
    public Optional<Step> lastMending() {
        return mended.isEmpty() ? Optional.empty() : Optional.of(mended.get(mended.size() - 1));
    }

    /** The signature that accepted the last mending; the last word counts. */
    public Optional<Step> accepted() {
        return signed.stream().filter(this::isAfterMending).reduce((a, b) -> b).filter(Step::accepted);
    }

    private boolean isAfterMending(Step signature) {
        return lastMending().filter(m -> m.seq() < signature.seq()).isPresent();
    }

    /** All that came of it, in the order of entries. */
    public List<Step> chain() {
        List<Step> all = new ArrayList<>(mended);
        all.addAll(signed);
        all.sort(java.util.Comparator.comparingLong(Step::seq));
        return all;
    }

    /** The project. */
    public String project() {
        return about.substring(0, Math.max(0, about.indexOf('/')));
    }

    /** The part or joint by its id. */
    public String made() {
        return about.substring(about.indexOf('/') + 1);
    }
}
