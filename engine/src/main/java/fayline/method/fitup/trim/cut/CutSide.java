package fayline.method.fitup.trim.cut;

/** Which of the two edges is cut; the gap is the same. */
public enum CutSide {
    /** The part. */
    PART,
    /** Its neighbour. */
    NEIGHBOUR
}
