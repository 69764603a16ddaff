package fayline.method.cure;

/** The states a mixed system passes, each with its own data-sheet time. None stands for another: gel is not handling. */
public enum CureState {
    /** The mass in the cup has heated or thickened too far to use. Depends on mass, container and temperature. */
    POT_LIFE,
    /** The film on the part can no longer be worked. */
    WORKING_LIFE,
    /** Adhesive spread on a surface has skinned or bloomed. */
    OPEN_TIME,
    /** The film has gelled. */
    GEL,
    /** The next coat may go on (tacky, no transfer). */
    RECOAT_OPENS,
    /** The next coat no longer bonds chemically; abrade first. */
    RECOAT_SHUTS,
    /** The joint or part may be handled with care. */
    HANDLING,
    /** The part may leave its mould. */
    DEMOULD,
    /** The data sheet's full cure. */
    FULL_CURE;

    /** The word for files and addresses, as {@code recoat-opens}. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
