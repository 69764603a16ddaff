package fayline.basis.units;

/** A text that was meant to be a quantity and is not; carries the parts from which a reader builds its message. */
public final class UnreadableQuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String expected;
    private final String suggestion;

    UnreadableQuantityException(String found, String expected, String suggestion) {
        super("found \"" + found + "\", expected " + expected + (suggestion.isEmpty() ? "" : "; " + suggestion));
        this.found = found;
        this.expected = expected;
        this.suggestion = suggestion;
    }

    /** What was found, as typed. */
    public String found() {
        return found;
    }

    /** What was expected, with an example. */
    public String expected() {
        return expected;
    }

    /** What to do about it; empty where nothing can be guessed. */
    public String suggestion() {
        return suggestion;
    }
}
