package fayline.flow.record;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Kinds of entries that this version folds into a state. An entry names its kind by {@link #key()}; a kind that a later
 * version adds stays in the record and in the chain and is passed over by the fold.
 */
public enum EntryKind {
    /** A definition file: {@code scope, path, text} or {@code base64}, {@code sha256}. */
    FILE_SAVED,
    /** A definition file is no longer part of the definition: {@code scope, path}. */
    FILE_REMOVED,
    /** A project joins the shop: {@code id, name}. */
    PROJECT_ADDED,
    /** A folder was read in, whole: {@code files, events, definition}. Closes the entries of one import. */
    FOLDER_IMPORTED,
    /** Hands begin a step: {@code step, at, people, places, which-way, despite, why}. */
    STEP_STARTED,
    /** Hands leave a step: {@code step, at, signed, slip, missing}. */
    STEP_FINISHED,
    /** A note on a step: {@code step, at, text, photos}. */
    STEP_NOTED,
    /** An earlier entry was wrong: {@code entry, why} and either {@code with} (fields laid over) or {@code withdrawn}. */
    CORRECTED,
    /**
     * The personal text of an earlier entry was taken out: {@code entry, why, at, kept} with the fields that were not personal. The
     * named payload is emptied in the same transaction.
     */
    ERASED,
    /** A measured value as typed: {@code kind, of, at, values, station, state}. */
    READING_TAKEN,
    /** Material taken from a lot for a step: {@code step, at, lot, component, amount, override, why, told}. */
    LOT_DRAWN,
    /**
     * A cup mixed for a step: {@code step, at, batch, system, resin-lot, hardener-lot, resin, hardener, weighed, why, told}; the amounts
     * as typed, absent where no scale was read.
     */
    MIX_MADE,
    /** A ply laid in a step, or left out of it: {@code step, at, ply, name, lot, skipped, why, told}. */
    PLY_LAID,
    /** Something came out other than drawn: {@code about, at, text, photos, structural, told, change}. */
    DEVIATION_RAISED,
    /** What is decided about a deviation: {@code deviation, at, disposition, note, structural, second, rework}. */
    DEVIATION_SETTLED,
    /**
     * A lot came into the stores: {@code lot, of, component, quantity, weighed, received, expires, opened-life, price, order, certificate,
     * at}.
     */
    LOT_RECEIVED,
    /** A lot was carried out of the cold or into it: {@code lot, at, to}. */
    LOT_MOVED,
    /** What is left was counted: {@code at, counts} with {@code lot, left} of each. */
    STOCK_TAKEN,
    /**
     * Something was ordered: {@code order, at, what, quantity, maker, drawing, revision, due, price, needed, features} with {@code name,
     * drawn, within} of each.
     */
    ORDER_PLACED,
    /** What was ordered came: {@code order, at, revision, measured, accepted, note, due} with {@code name, found} of each measure. */
    ORDER_RECEIVED,
    /** Somebody has looked at a stage: {@code number, stage, at, who, own, text, scale, facing, photos}. */
    VISIT_HELD,
    /** Something that a visit found: {@code visit, number, about, at, text, photos}. */
    FINDING_RAISED,
    /** How something found was put right: {@code finding, at, text, photos}. */
    FINDING_CORRECTED,
    /** Whether that is accepted: {@code finding, at, who, accepted, text}. */
    FINDING_SIGNED,
    /** An alteration of the design is asked for: {@code number, at, what, why, touches, structural}. */
    CHANGE_RAISED,
    /**
     * What is decided about a change: {@code change, at, decision, note, structural, second, definition, items, withdraws} with {@code made, drawing}
     * of each thing that is made otherwise.
     */
    CHANGE_DECIDED,
    /** What became of one thing that a change touches: {@code change, at, item, how, note, drawing}. */
    CHANGE_SETTLED,
    /** All that a change touches is settled: {@code change, at, note}. */
    CHANGE_CLOSED,
    /** What was told of a week, settled: {@code week, at, title, text, photos}. */
    WEEK_TOLD,
    /** The plan that the crew was told: {@code definition, hash, made, steps}. */
    PLAN_PUBLISHED,
    /** A head was printed to be kept outside: {@code number, size, root, hash, at, form, key, signature}. */
    SHEET_PRINTED,
    /** Somebody may sign in from now on: {@code person, name, role}. Never a password, PIN or code. */
    PERSON_ADMITTED,
    /** What somebody may, or how they sign in, was changed, or they may no longer sign in: {@code person, what, role}. */
    PERSON_CHANGED,
    /** A phone or tablet is known from now on: {@code device, label, sort, person}. */
    DEVICE_PAIRED,
    /** A phone or tablet is no longer known: {@code device, label, why}. */
    DEVICE_ENDED,
    /** Somebody signed in: {@code person, way, device, tries} with the wrong tries since the last time. */
    SIGNED_IN,
    /** Somebody signed out or was signed out: {@code person, why}. */
    SIGNED_OUT,
    /** After wrong tries no further one is heard for a while: {@code person, from, tries, until}. */
    SIGN_IN_BARRED,
    /** Somebody tried what they may not: {@code act, role, what}. */
    ACT_REFUSED;

    private static final Set<EntryKind> OF_PEOPLE = Set.of(
            PERSON_ADMITTED,
            PERSON_CHANGED,
            DEVICE_PAIRED,
            DEVICE_ENDED,
            SIGNED_IN,
            SIGNED_OUT,
            SIGN_IN_BARRED,
            ACT_REFUSED);

    /** Whether it tells when the hands began or left a step, or what they noted. */
    public boolean isOfStep() {
        return this == STEP_STARTED || this == STEP_FINISHED || this == STEP_NOTED;
    }

    /** Whether it tells of who may enter, and nothing of the work. */
    public boolean isOfPeople() {
        return OF_PEOPLE.contains(this);
    }

    /** Whether nothing of the work follows from it, so that nothing need be computed anew. */
    public boolean bearsOnNoWork() {
        return isOfPeople() || this == SHEET_PRINTED || this == WEEK_TOLD;
    }

    /** The word in the entry, as {@code file-saved}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind that a word names, where this version knows it. */
    public static Optional<EntryKind> of(String key) {
        for (EntryKind kind : values()) {
            if (kind.key().equals(key)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
