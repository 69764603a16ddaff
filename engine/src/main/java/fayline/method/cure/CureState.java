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

    /**
     * Whether reaching the state ends something that may be done, so that the warmest probe and the shortest time rule;
     * otherwise it permits something, and the coldest probe and the longest time rule.
     */
    public boolean runsOut() {
        return switch (this) {
            case POT_LIFE, WORKING_LIFE, OPEN_TIME, GEL, RECOAT_SHUTS -> true;
            case RECOAT_OPENS, HANDLING, DEMOULD, FULL_CURE -> false;
        };
    }

    /** The word in a sentence, as {@code recoat window shuts}. */
    public String words() {
        return switch (this) {
            case POT_LIFE -> "end of pot life";
            case WORKING_LIFE -> "end of working life";
            case OPEN_TIME -> "end of open time";
            case GEL -> "gel";
            case RECOAT_OPENS -> "opening of the recoat window";
            case RECOAT_SHUTS -> "closing of the recoat window";
            case HANDLING -> "handling strength";
            case DEMOULD -> "demould";
            case FULL_CURE -> "full cure";
        };
    }

    /** The word for files and addresses, as {@code recoat-opens}. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
