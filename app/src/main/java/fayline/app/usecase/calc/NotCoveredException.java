package fayline.app.usecase.calc;

import java.util.function.Supplier;

/** Inputs outside the range for which a method answers; the message says which and why. */
public final class NotCoveredException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the reason. */
    public NotCoveredException(String reason) {
        super(reason);
    }

    /**
     * What a method answers, where its inputs keep its rules.
     *
     * @throws NotCoveredException with the rule that they break, where it refuses them
     */
    public static <T> T refusing(Supplier<T> answer) {
        try {
            return answer.get();
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
    }

    /** The reason. */
    public String reason() {
        return String.valueOf(getMessage());
    }
}
