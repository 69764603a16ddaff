package fayline.flow.result.change;

import java.util.List;
import java.util.Locale;

/**
 * One thing that a change touches.
 *
 * @param group what it is
 * @param id its id in that group
 * @param name what people call it
 * @param why over which ways it is touched, each a few words
 * @param standing whether it is made
 * @param detail what is to be known of it, as a drawing, a count or a mass; may be empty
 */
public record Reached(Group group, String id, String name, List<String> why, Standing standing, String detail) {
    /** Copies the list. */
    public Reached {
        why = List.copyOf(why);
    }

    /** Its name among all that a change touches, as {@code made/hull-bottom}. */
    public String item() {
        return group.key() + "/" + id;
    }

    /** What it is. */
    public enum Group {
        /** What the change alters itself, beside parts and joints: a laminate, a recipe, a material. */
        DESIGN("Altered in the definition"),
        /** Parts and joints that are made otherwise. */
        MADE("Parts and joints made otherwise"),
        /** Parts and joints beside those. */
        BESIDE("Parts and joints beside them"),
        MOULD("Moulds"),
        TEMPLATE("1:1 templates"),
        CARD("Cards and travellers"),
        ORDER("Orders"),
        FIT("Fits and chains"),
        CHECK("Checks"),
        WEIGHT("Weights"),
        /** Steps of what is made otherwise; they follow their part and are not settled by themselves. */
        STEP("Plan steps");

        private final String words;

        Group(String words) {
            this.words = words;
        }

        /** Its heading. */
        public String words() {
            return words;
        }

        /** The word in the record. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether each of it is settled by itself before a change can be closed. */
        public boolean isSettled() {
            return this != STEP;
        }
    }

    /** Whether it is made. */
    public enum Standing {
        MADE("made"),
        IN_WORK("in work"),
        NOT_BEGUN("not begun"),
        /** It is nothing that is made. */
        NONE("");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** The word as people read it. */
        public String words() {
            return words;
        }
    }
}
