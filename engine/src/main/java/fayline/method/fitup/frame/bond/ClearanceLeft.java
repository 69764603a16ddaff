package fayline.method.fitup.frame.bond;

/**
 * A gap after release.
 *
 * @param clearance the gap asked about
 * @param gapMm what is left of it; negative is overlap, which the linear method does not prevent
 */
public record ClearanceLeft(Clearance clearance, double gapMm) {
    /** Whether part and structure would overlap. */
    public boolean overlaps() {
        return gapMm < 0;
    }
}
