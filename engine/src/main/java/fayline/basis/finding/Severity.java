package fayline.basis.finding;

/** How much a finding matters. */
public enum Severity {
    /** For information. */
    NOTE,
    /** Look before going on; the work can go on. */
    CAUTION,
    /** The work cannot go on as described. */
    STOP
}
