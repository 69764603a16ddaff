package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.BagStack;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PlyCut;
import java.util.List;
import java.util.Optional;

/**
 * What a step takes.
 *
 * @param stage its lay-up stage; 0 for none
 * @param plies plies and core it lays
 * @param mixes what is mixed for it
 * @param bag its bag
 * @param needs what it draws from the stores
 * @param findings what is wrong or assumed
 */
record StepAmounts(
        int stage,
        List<PlyCut> plies,
        List<StepMix> mixes,
        Optional<BagStack> bag,
        List<Need> needs,
        List<Finding> findings) {
    StepAmounts {
        plies = List.copyOf(plies);
        mixes = List.copyOf(mixes);
        needs = List.copyOf(needs);
        findings = List.copyOf(findings);
    }
}
