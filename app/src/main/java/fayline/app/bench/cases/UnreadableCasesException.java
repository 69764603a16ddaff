package fayline.app.bench.cases;

/** A file that has the form of a layout and does not keep it; the message says where and what was expected. */
final class UnreadableCasesException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    UnreadableCasesException(String message) {
        super(message);
    }

    UnreadableCasesException(String message, Throwable cause) {
        super(message, cause);
    }
}
