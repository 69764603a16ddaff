package fayline.basis.units;

/** Which units a person reads. */
public enum UnitSystem {
    /** mm, g, kg, degC, bar. */
    METRIC,
    /** in, thou, lb, oz, degF, inHg. */
    INCH
}
