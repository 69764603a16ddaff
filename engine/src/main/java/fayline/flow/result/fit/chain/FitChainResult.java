package fayline.flow.result.fit.chain;

import fayline.basis.finding.Finding;
import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.FitChain;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainResult;
import fayline.method.fitup.chain.correct.CorrectionResult;
import fayline.method.fitup.chain.correct.RemedyResult;
import fayline.method.fitup.scheme.Assumption;
import java.util.List;
import java.util.Optional;

/**
 * Everything that follows from a chain and the readings where it ends.
 *
 * @param chain the chain
 * @param end the last fit
 * @param rows its gaps: as read, or the wanted ones where nothing is read; empty where no place is known
 * @param read whether the gaps were read
 * @param asked the links and gaps as the method sees them; empty where no place is known
 * @param spread chance and shares as it lies; empty where no place is known
 * @param carried what was read on the airframe, carried to each bench that marks lay onto it and where a bond is still open
 * @param correction where a correction goes; empty where no gap is read or everything is bonded and nothing can move
 * @param remedies what is left; empty until every link is bonded and gaps are read
 * @param missing uncertainties that nobody gave, in words; not empty: no chance is told
 * @param assumed what was assumed instead
 * @param findings what must be said beside what the other parts tell
 */
public record FitChainResult(
        FitChain chain,
        FitResult end,
        List<FitRow> rows,
        boolean read,
        Optional<Chain> asked,
        Optional<ChainResult> spread,
        List<CarriedToBench> carried,
        Optional<Correcting> correction,
        Optional<RemedyResult> remedies,
        List<String> missing,
        List<Assumption> assumed,
        List<Finding> findings) {
    /** Copies the lists. */
    public FitChainResult {
        rows = List.copyOf(rows);
        carried = List.copyOf(carried);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        findings = List.copyOf(findings);
    }

    /** Whether every bond is made. */
    public boolean done() {
        return chain.links().stream().allMatch(ChainLink::done);
    }

    /** Chance and shares that count: with the chosen correction where there is one, else as it lies. */
    public Optional<ChainResult> counting() {
        return correction.flatMap(Correcting::afterwards).or(() -> spread);
    }

    /**
     * Where a correction goes.
     *
     * @param result the ways
     * @param chances that all end inside after each way, in order, good to about a hundredth; empty where no chance is told
     * @param afterwards chance and shares after the chosen way; empty where there is none
     * @param moves what moves by the chosen way; empty where there is none
     */
    public record Correcting(
            CorrectionResult result, List<Double> chances, Optional<ChainResult> afterwards, List<MoveTold> moves) {
        /** Copies the lists. */
        public Correcting {
            chances = List.copyOf(chances);
            moves = List.copyOf(moves);
        }
    }
}
