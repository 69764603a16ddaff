package fayline.store.file.outline;

/** A drawing that does not give an outline: what was found, what was expected, what to do. */
final class UnreadableOutlineException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String found;
    private final String expected;
    private final String suggestion;

    UnreadableOutlineException(String found, String expected, String suggestion) {
        super("found " + found + ", expected " + expected);
        this.found = found;
        this.expected = expected;
        this.suggestion = suggestion;
    }

    String found() {
        return found;
    }

    String expected() {
        return expected;
    }

    String suggestion() {
        return suggestion;
    }
}
