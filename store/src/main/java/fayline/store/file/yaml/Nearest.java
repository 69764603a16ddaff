package fayline.store.file.yaml;

import java.util.Collection;
import java.util.Optional;

/** Finds the known word that a mistyped one was meant to be. */
public final class Nearest {
    private static final int MAX_LENGTH = 60;

    private Nearest() {}

    /**
     * A suggestion.
     *
     * @param typed what was typed
     * @param known the words that would be understood
     * @return {@code did you mean "..."?}, or empty if none is near
     */
    public static String suggest(String typed, Collection<String> known) {
        return find(typed, known).map(w -> "did you mean \"" + w + "\"?").orElse("");
    }

    /** The nearest known word by changed letters, if it is near enough to be meant; of several the first. */
    public static Optional<String> find(String typed, Collection<String> known) {
        if (typed.length() > MAX_LENGTH) {
            return Optional.empty();
        }
        String best = "";
        int least = Math.max(2, typed.length() / 3) + 1;
        for (String word : known) {
            int d = distance(plain(typed), plain(word));
            if (d < least && d < Math.max(2, word.length())) {
                least = d;
                best = word;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    private static String plain(String s) {
        return s.toLowerCase(java.util.Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Changed, added, dropped letters, and neighbours swapped. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
