package fayline.app.web.better;

import java.util.List;

/**
 * What the page of a better plan shows.
 *
 * @param running whether a search goes on
 * @param can whether this machine can search
 * @param fault what went wrong, in words
 * @param origin how the plan came about
 * @param finish when all planned work ends
 * @param least what no plan can beat, in a sentence; empty where that is not known
 * @param total the plan's score in hours
 * @param before the score when the search began; empty where none was made
 * @param terms what the score is made of
 * @param found the better plans of the search, the last one first
 * @param told when the crew was last told a plan; empty for never
 * @param isTold whether the crew was told just this plan
 */
public record BetterView(
        boolean running,
        boolean can,
        String fault,
        String origin,
        String finish,
        String least,
        String total,
        String before,
        List<Term> terms,
        List<Found> found,
        String told,
        boolean isTold) {
    /** Copies the lists. */
    public BetterView {
        terms = List.copyOf(terms);
        found = List.copyOf(found);
    }

    /**
     * A term of the score.
     *
     * @param name what is counted
     * @param amount how much of it, with its unit
     * @param weight what one counts, in hours
     * @param cost what it adds, in hours
     */
    public record Term(String name, String amount, String weight, String cost) {}

    /**
     * A better plan.
     *
     * @param total its score in hours
     * @param finish when all planned work ends by it
     */
    public record Found(String total, String finish) {}
}
