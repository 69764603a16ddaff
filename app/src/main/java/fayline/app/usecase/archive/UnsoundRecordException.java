package fayline.app.usecase.archive;

/** A record whose chain does not hold, so that nothing is made from it. */
public final class UnsoundRecordException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnsoundRecordException(String fault, String then) {
        super(fault + "; " + then);
    }
}
