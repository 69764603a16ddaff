package fayline.app.usecase.people;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a password and a PIN must be. Nothing is asked of the mix of characters; nothing typed is cut or changed. */
public final class SecretRules {
    /** Fewest characters of a password. */
    public static final int SHORTEST_PASSWORD = 15;

    /** Most characters of a password, so that a whole book is not hashed. */
    public static final int LONGEST_PASSWORD = 200;

    /** Digits of a PIN. */
    public static final int PIN_DIGITS = 6;

    /** A password that a list of common ones and patterns finds within so many guesses (ten to the power of this). */
    private static final double LEAST_GUESSES_LOG10 = 10;

    private static final int MEASURED = 100;
    private static final int ASIDE = 3;

    private SecretRules() {}

    /** The rules for a password, a sentence each, as pages state them. */
    public static List<String> password() {
        return List.of(
                "At least " + SHORTEST_PASSWORD + " characters, at most " + LONGEST_PASSWORD
                        + ": some words that belong together only for you will do.",
                "Any characters, in any mix, blanks too. Kept exactly as typed.",
                "None that stand on lists of common passwords or follow a simple pattern.");
    }

    /** The rules for a PIN. */
    public static List<String> pin() {
        return List.of(
                PIN_DIGITS + " digits, not all the same, not in a row as 123456, not a part repeated as 121212.",
                "It works only on phones and tablets that the lead has paired.");
    }

    /**
     * Refuses a password that breaks a rule.
     *
     * @param password as typed
     * @param known words an attacker would try first, such as the person's name
     */
    static void requirePassword(String password, List<String> known) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST_PASSWORD || length > LONGEST_PASSWORD) {
            throw DeniedException.of("The password has " + length + " characters, expected " + SHORTEST_PASSWORD
                    + " to " + LONGEST_PASSWORD + ".");
        }
        String measured = password.substring(0, Math.min(password.length(), MEASURED));
        if (new Zxcvbn().measure(measured, known).getGuessesLog10() < LEAST_GUESSES_LOG10) {
            throw DeniedException.of(
                    "The password is a common one or follows a simple pattern, expected one that nobody"
                            + " else would think of.");
        }
    }

    static void requirePin(String pin) {
        if (!pin.matches("[0-9]{" + PIN_DIGITS + "}")) {
            throw DeniedException.of("The PIN is not " + PIN_DIGITS + " digits.");
        }
        if (isSimple(pin)) {
            throw DeniedException.of("The PIN is one of the first that others would try. Choose another.");
        }
    }

    private static boolean isSimple(String pin) {
        Set<Integer> steps = new HashSet<>();
        for (int i = 1; i < pin.length(); i++) {
            steps.add(Math.floorMod(pin.charAt(i) - pin.charAt(i - 1), 10));
        }
        boolean row = steps.size() == 1 && (steps.contains(0) || steps.contains(1) || steps.contains(9));
        boolean repeated = pin.substring(0, 2).repeat(ASIDE).equals(pin)
                || pin.substring(0, ASIDE).repeat(2).equals(pin);
        return row || repeated;
    }
}
