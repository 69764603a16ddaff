package fayline.app.web.traveller;

import fayline.app.web.frame.PhotoView;
import fayline.app.web.trouble.DeviationView;
import java.util.List;

/**
 * Everything recorded of a part or joint.
 *
 * @param made its id
 * @param name its name
 * @param link its page
 * @param find what is sought; empty for all
 * @param byDate whether the lines stand by date; else by step
 * @param lines the lines that are found
 * @param all how many lines there are
 * @param deviations its deviations
 * @param unproven whether names were picked and not proven
 */
public record TravelledView(
        String made,
        String name,
        String link,
        String find,
        boolean byDate,
        List<Line> lines,
        int all,
        List<DeviationView> deviations,
        boolean unproven) {
    /** Copies the lists. */
    public TravelledView {
        lines = List.copyOf(lines);
        deviations = List.copyOf(deviations);
    }

    /**
     * Something recorded.
     *
     * @param step the step's title
     * @param card its card
     * @param what what it was
     * @param when when, by whom, and how late it was entered
     * @param facts lot, air, people, signature: each a name and a value
     * @param photos photos
     * @param trouble what is wrong with it; empty for nothing
     * @param entry its entry
     */
    public record Line(
            String step,
            String card,
            String what,
            String when,
            List<Fact> facts,
            List<PhotoView> photos,
            String trouble,
            long entry) {
        /** Copies the lists. */
        public Line {
            facts = List.copyOf(facts);
            photos = List.copyOf(photos);
        }

        /** All of it in small letters, to be searched. */
        String text() {
            StringBuilder s = new StringBuilder(step + " " + what + " " + when + " " + trouble);
            facts.forEach(f -> s.append(' ').append(f.value()));
            return s.toString().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * A fact.
     *
     * @param name what it is
     * @param value its value
     */
    public record Fact(String name, String value) {}
}
