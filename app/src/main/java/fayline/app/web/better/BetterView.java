package fayline.app.web.better;

import java.util.List;

/**
 * What the page of a better plan shows.
 *
 * @param running whether a search goes on
 * @param overtaken whether something happened since that search began
 * @param can whether this machine can search
 * @param fault what went wrong, in words
 * @param origin how the plan came about
 * @param finish when all planned work ends
 * @param finishBefore when it ended when the search began; empty where no better plan was found
 * @param least what no plan can beat, in a sentence; empty where that is not known
 * @param total the plan's score in hours
 * @param before the score when the search began; empty where no better plan was found
 * @param terms what the score is made of
 * @param found the better plans of the search, the last one first
 * @param told when the crew was last told a plan and what moved since, in a sentence; empty for never
 */
public record BetterView(
        boolean running,
        boolean overtaken,
        boolean can,
        String fault,
        String origin,
        String finish,
        String finishBefore,
        String least,
        String total,
        String before,
        List<Term> terms,
        List<Found> found,
        String told) {
    /** Copies the lists. */
    public BetterView {
        terms = List.copyOf(terms);
        found = List.copyOf(found);
    }

    /**
     * A term of the score.
     *
     * @param name what is counted
     * @param amount how much of it, with its unit, times what one counts in hours
     * @param cost hours that it adds
     * @param before hours that it added when the search began; empty where no better plan was found
     */
    public record Term(String name, String amount, String cost, String before) {}

    /**
     * A better plan.
     *
     * @param total its score in hours
     * @param finish when all planned work ends by it
     */
    public record Found(String total, String finish) {}
}
