package fayline.app.cli;

/** Something asked for that cannot be; the message is a sentence with what was found and what was expected. */
final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadInputException(String sentence) {
        super(sentence);
    }
}
