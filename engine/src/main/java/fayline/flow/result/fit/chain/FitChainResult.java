package fayline.flow.result.fit.chain;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.correct.CorrectionResult;
import fayline.method.fitup.chain.correct.RemedyResult;
import java.util.List;
import java.util.Optional;

/**
 * Everything that follows from a chain and the readings where it ends.
 *
 * @param chain the chain
 * @param end the last fit
 * @param rows its gaps: as read, or the wanted ones where nothing is read; empty where no place is known
 * @param read whether the gaps were read
 * @param spread chance and shares; empty where no place is known
 * @param correction where a correction goes; empty where no gap is read or everything is bonded and nothing can move
 * @param moves the chosen correction in words, what moves first; empty where there is none
 * @param remedies what is left; empty until every link is bonded and gaps are read
 * @param missing uncertainties that nobody gave, in words; not empty: no chance is told
 * @param assumed what was assumed instead, in words
 * @param findings what must be said
 */
public record FitChainResult(
        FitChain chain,
        FitResult end,
        List<FitRow> rows,
        boolean read,
        Optional<ChainResult> spread,
        Optional<CorrectionResult> correction,
        List<MoveTold> moves,
        Optional<RemedyResult> remedies,
        List<String> missing,
        List<Phrase> assumed,
        List<Finding> findings) {
    /** Copies the lists. */
    public FitChainResult {
        rows = List.copyOf(rows);
        moves = List.copyOf(moves);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        findings = List.copyOf(findings);
    }

    /** Whether every bond is made. */
    public boolean done() {
        return chain.links().stream().allMatch(l -> l.done());
    }

    /**
     * One thing that moves.
     *
     * @param name the link or the neighbour
     * @param words the move as seen on the airframe
     * @param bench the same in the axes of a bench that is turned; empty where they are the airframe's
     */
    public record MoveTold(String name, Phrase words, Phrase bench) {}
}
