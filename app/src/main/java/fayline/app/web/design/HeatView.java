package fayline.app.web.design;

import java.util.List;

/**
 * What the heat page shows.
 *
 * @param id the part
 * @param name its name
 * @param back the part's or joint's own page
 * @param peak the peak as typed
 * @param ramp kelvins per hour as typed
 * @param hold the hold as typed
 * @param loads what may load the part, each with whether it was ticked
 * @param asked whether a heat was asked about
 * @param refused what was wrong with what was typed, a sentence each
 * @param answers an answer for each resin in the part, the tightest first
 */
public record HeatView(
        String id,
        String name,
        String back,
        String peak,
        String ramp,
        String hold,
        List<Load> loads,
        boolean asked,
        List<String> refused,
        List<Answer> answers) {
    /** Copies the lists. */
    public HeatView {
        loads = List.copyOf(loads);
        refused = List.copyOf(refused);
        answers = List.copyOf(answers);
    }

    /**
     * Something that may load the part.
     *
     * @param key its word in the address
     * @param name its name
     * @param ticked whether it was ticked
     */
    public record Load(String key, String name, boolean ticked) {}

    /**
     * What one resin says.
     *
     * @param resin the resin, and the step and time it was mixed
     * @param softens whether the part would soften
     * @param facts the figures, each with its name
     * @param list what to support and unload
     * @param why formula, inputs and source, a sentence each
     * @param findings what else must be said
     */
    public record Answer(
            String resin,
            boolean softens,
            List<Fact> facts,
            List<String> list,
            List<String> why,
            List<String> findings) {
        /** Copies the lists. */
        public Answer {
            facts = List.copyOf(facts);
            list = List.copyOf(list);
            why = List.copyOf(why);
            findings = List.copyOf(findings);
        }
    }

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     */
    public record Fact(String name, String value) {}
}
