package fayline.flow.record;

import java.util.Locale;
import java.util.Optional;

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
    /** Hands begin a step: {@code step, at, people, places, which-way}. */
    STEP_STARTED,
    /** Hands leave a step: {@code step, at, signed, slip}. */
    STEP_FINISHED,
    /** A note on a step: {@code step, at, text}. */
    STEP_NOTED,
    /** An earlier entry was wrong: {@code entry, why} and either {@code with} (fields laid over) or {@code withdrawn}. */
    CORRECTED,
    /** A measured value as typed: {@code kind, of, at, values, station, state}. */
    READING_TAKEN,
    /** The plan that the crew was told: {@code definition, hash, made, steps}. */
    PLAN_PUBLISHED;

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
