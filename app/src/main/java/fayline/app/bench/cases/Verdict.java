package fayline.app.bench.cases;

import java.util.List;

/**
 * What came of one case.
 *
 * @param file the file's path below the folder
 * @param id the case
 * @param outcome what came of it
 * @param differences each quantity that differs; empty unless the outcome is {@link Outcome#DIFFERS}
 * @param why why the case is not covered; empty otherwise
 */
public record Verdict(String file, String id, Outcome outcome, List<Difference> differences, String why) {
    /** Copies the list. */
    public Verdict {
        differences = List.copyOf(differences);
    }

    /** What can come of a case. */
    public enum Outcome {
        /** Every asked quantity is within its tolerance. */
        HOLDS("holds"),
        /** At least one is not. */
        DIFFERS("differs"),
        /** No subject answers what is asked from what is given. */
        NOT_COVERED("not covered");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** The outcome as it is printed. */
        public String words() {
            return words;
        }
    }

    /**
     * One quantity that differs.
     *
     * @param name the quantity
     * @param expected the expected value, as the case has it
     * @param found the value reckoned, in the case's unit
     * @param unit the case's unit
     */
    public record Difference(String name, String expected, String found, String unit) {}
}
