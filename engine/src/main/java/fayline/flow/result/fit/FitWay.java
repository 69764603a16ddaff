package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.method.fitup.aim.AimedMove;
import java.util.List;
import java.util.Optional;

/**
 * One way to judge the move, in the builder's words.
 *
 * @param aimed what it is best at, and what it leaves
 * @param sentence the move in words; empty where there is none
 * @param atMarks where marked places go, in words
 * @param cut what would have to come off were the part held there; empty where no gap ends below its limit
 */
public record FitWay(AimedMove aimed, Phrase sentence, List<Phrase> atMarks, Optional<Cut> cut) {
    /** Copies the list. */
    public FitWay {
        atMarks = List.copyOf(atMarks);
    }

    /** What the move is best at, in a few words. */
    public String name() {
        return switch (aimed.aim()) {
            case WORST -> "Worst error least";
            case EVEN -> "Errors evened out";
            case INSIDE -> "Farthest inside the limits";
            case LEAST -> "Moved as little as needed";
        };
    }

    /**
     * What would have to come off so that no gap is below its limit, the part held where this move brings it. The least trim, for
     * which the part may move again, is told apart: it is never more.
     *
     * @param mostMm the deepest cut, in mm
     * @param at the station where it is
     * @param areaMm2 all of it, each station taken for its share of the edge, in mm²
     */
    public record Cut(double mostMm, String at, double areaMm2) {}
}
