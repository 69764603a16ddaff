package fayline.app.usecase.calc;

import java.util.List;

/**
 * One way to reckon one term from others, by a calculator of the engine.
 *
 * @param gives the term it gives
 * @param needs terms it cannot do without
 * @param uses terms that change the answer where they are known
 * @param computation the call of the calculator
 */
public record Relation(String gives, List<String> needs, List<String> uses, Computation computation) {
    /** Copies the lists. */
    public Relation {
        needs = List.copyOf(needs);
        uses = List.copyOf(uses);
    }

    /**
     * Makes a relation whose inputs are written {@code "air rh [formula]"}: needed ones plain, optional ones in brackets.
     */
    public static Relation giving(String gives, String inputs, Computation computation) {
        List<String> words = List.of(inputs.split(" "));
        return new Relation(
                gives,
                words.stream().filter(w -> !w.startsWith("[")).toList(),
                words.stream()
                        .filter(w -> w.startsWith("["))
                        .map(w -> w.substring(1, w.length() - 1))
                        .toList(),
                computation);
    }

    /** Calls a calculator. */
    @FunctionalInterface
    public interface Computation {
        /**
         * Reckons the term.
         *
         * @param known the inputs; also takes method, source and cautions
         * @return the value: a {@link Double} in SI, a {@link Boolean}, a {@link String} or a list of doubles, after the
         *     term's shape
         * @throws NotCoveredException if the inputs are outside what the method covers
         */
        Object of(Known known);
    }
}
