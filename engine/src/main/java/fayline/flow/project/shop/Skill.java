package fayline.flow.project.shop;

/** What a person may be put to. */
public enum Skill {
    /** Lay up wet cloth. */
    LAMINATE,
    /** Bag and pull vacuum. */
    BAG,
    /** Sand, trim, drill composites. */
    SAND,
    /** Prepare surfaces and bond. */
    BOND,
    /** Make moulds and plugs. */
    TOOLING,
    /** Bend, flare and fit lines. */
    PLUMBING,
    /** Rig controls, gear, drive. */
    RIGGING,
    /** Wire and instruments. */
    ELECTRICS,
    /** Inspect and sign hold points in the shop's record. */
    SIGN,
    /** Anything that needs no skill but an induction. */
    HELP;

    /** The word for files, as {@code laminate}. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
