package fayline.app.web.fit;

import java.util.List;
import java.util.Optional;

/**
 * What to do now, in plain words and in the order a builder asks.
 *
 * @param state the state it rests on, in words
 * @param fits whether it fits if moved
 * @param verdict does it fit if moved, a sentence
 * @param seen the gaps to see in the shop, where its temperature makes them others than those sought
 * @param outside stations that stay outside, each with what is needed
 * @param move the move in a sentence; empty for none
 * @param turn what the turn makes over the part's height and length, a sentence; empty for nothing
 * @param marks where marked places go
 * @param flush how to bring a flat part flush, in words; empty for nothing
 * @param flushes what the move does to the flushes of a curved part; none for a flat one
 * @param shims what to put in at each index point
 * @param shimsWhy where the page that says why finds them
 * @param shimWords what the shims leave, a sentence each
 * @param trim the least trim, a sentence each; empty where none is needed
 * @param templates the 1:1 templates
 * @param schemes ways to locate it, side by side
 * @param missing what nobody has given, so that no chance is told
 * @param assumed what is assumed instead
 * @param helps what would help, a sentence each
 * @param findings what else must be said
 */
public record FitAnswer(
        String state,
        boolean fits,
        String verdict,
        Optional<Seen> seen,
        List<String> outside,
        String move,
        String turn,
        List<String> marks,
        String flush,
        List<FlushRow> flushes,
        List<Shim> shims,
        String shimsWhy,
        List<String> shimWords,
        List<String> trim,
        List<Link> templates,
        List<Scheme> schemes,
        List<String> missing,
        List<String> assumed,
        List<String> helps,
        List<String> findings) {
    /** Copies the lists. */
    public FitAnswer {
        outside = List.copyOf(outside);
        marks = List.copyOf(marks);
        flushes = List.copyOf(flushes);
        shims = List.copyOf(shims);
        shimWords = List.copyOf(shimWords);
        trim = List.copyOf(trim);
        templates = List.copyOf(templates);
        schemes = List.copyOf(schemes);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        helps = List.copyOf(helps);
        findings = List.copyOf(findings);
    }

    /**
     * The gaps to see in the shop.
     *
     * @param title at which temperature
     * @param words why they are others, in words
     * @param rows one for each station read
     */
    public record Seen(String title, String words, List<SeenRow> rows) {
        /** Copies the list. */
        public Seen {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One station as seen in the shop.
     *
     * @param mark its mark
     * @param read the gap as read
     * @param moved the gap to see after the move; empty without one
     * @param needs the limits there
     */
    public record SeenRow(String mark, String read, String moved, String needs) {}

    /**
     * A shim.
     *
     * @param point the index point
     * @param exact what must be filled
     * @param stock the pieces; empty where none are named
     */
    public record Shim(String point, String exact, String stock) {}

    /**
     * A file.
     *
     * @param name what it is
     * @param link its address
     */
    public record Link(String name, String link) {}

    /**
     * A way to locate the part.
     *
     * @param name its name
     * @param chosen whether it is the one that was chosen
     * @param best whether its chance is the highest
     * @param chance the chance that all stations end inside; empty where it is not told
     * @param worst the station of lowest chance; empty where it is not told
     * @param spread the standard deviation there; empty where it is not told
     * @param shares what makes most of it; empty where it is not told
     * @param holds how evenly it holds, in words
     */
    public record Scheme(
            String name,
            boolean chosen,
            boolean best,
            String chance,
            String worst,
            String spread,
            String shares,
            String holds) {}

    /**
     * A flush of a curved part.
     *
     * @param mark the station
     * @param read as read
     * @param moved after the move
     * @param needs what it needs
     */
    public record FlushRow(String mark, String read, String moved, String needs) {}
}
