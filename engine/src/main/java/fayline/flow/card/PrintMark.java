package fayline.flow.card;

import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What stands at the foot of a card or template, by which it is known again: {@code hull-bottom | OU-110 rev B | 9f2c44d1a7b3}.
 *
 * @param made the part or joint
 * @param drawing its drawing with the revision; empty where it has none
 * @param definition how the hash of the definition begins from which it was printed
 */
public record PrintMark(String made, String drawing, String definition) {
    private static final int SHOWN = 12;
    private static final int LEAST = 8;

    /** The mark of what is printed of a part or joint from a definition. */
    public static PrintMark of(Definition d, String made) {
        return of(made, d.parts().find(made).map(Part::drawing).orElse(""), d.hash());
    }

    /** The mark of what is printed of a part or joint, to its drawing, from the definition of a hash. */
    public static PrintMark of(String made, String drawing, String hash) {
        return new PrintMark(made, drawing, hash.substring(0, Math.min(SHOWN, hash.length())));
    }

    /** The mark as it is printed. */
    public String text() {
        return made + " | " + (drawing.isEmpty() ? "no drawing" : drawing) + " | " + definition;
    }

    /** What somebody typed or scanned; empty where it is no such mark. */
    public static Optional<PrintMark> parse(String typed) {
        List<String> bits =
                Arrays.stream(typed.split("[|\\n]", -1)).map(String::strip).toList();
        if (bits.size() != 3 || !bits.get(0).matches("[A-Za-z0-9][A-Za-z0-9-]{0,63}")) {
            return Optional.empty();
        }
        String hash = bits.get(2).toLowerCase(Locale.ROOT);
        return hash.matches("[0-9a-f]{" + LEAST + ",64}")
                ? Optional.of(new PrintMark(
                        bits.get(0).toLowerCase(Locale.ROOT),
                        bits.get(1).equals("no drawing") ? "" : bits.get(1),
                        hash))
                : Optional.empty();
    }
}
