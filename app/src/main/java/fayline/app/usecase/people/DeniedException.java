package fayline.app.usecase.people;

/** Somebody is not let in, or something about people is not taken; the message is a sentence for them. */
public final class DeniedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final long waitS;

    private DeniedException(String sentence, long waitS) {
        super(sentence);
        this.waitS = waitS;
    }

    static DeniedException of(String sentence) {
        return new DeniedException(sentence, 0);
    }

    static DeniedException later(String sentence, long waitS) {
        return new DeniedException(sentence, Math.max(1, waitS));
    }

    /** In how many seconds it is worth trying again; 0 where waiting does not help. */
    public long waitS() {
        return waitS;
    }

    /** Why, in a sentence. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
