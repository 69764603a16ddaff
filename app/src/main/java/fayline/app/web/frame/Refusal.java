package fayline.app.web.frame;

import java.util.List;

/** Something that was asked for and is not given; told in plain words on a page of its own. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int status;
    private final transient List<String> remedies;

    /**
     * Refuses.
     *
     * @param status the HTTP status
     * @param sentence what was found and why it is refused
     * @param remedies what can be done, a sentence each
     */
    public Refusal(int status, String sentence, List<String> remedies) {
        super(sentence);
        this.status = status;
        this.remedies = List.copyOf(remedies);
    }

    /** Something that does not exist. */
    public static Refusal absent(String what) {
        return new Refusal(404, "There is no " + what + " here.", List.of("Go back, or start from Today."));
    }

    /** Something typed that cannot be taken. */
    public static Refusal input(String sentence) {
        return new Refusal(422, sentence, List.of("Go back: what was typed is still there."));
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** What is refused and why. */
    public String sentence() {
        return String.valueOf(getMessage());
    }

    /** What can be done. */
    public List<String> remedies() {
        return remedies;
    }
}
