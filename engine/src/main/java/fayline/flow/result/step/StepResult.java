package fayline.flow.result.step;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.BagStack;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PlyCut;
import java.util.List;
import java.util.Optional;

/**
 * One step on one part or joint, with everything it takes. Texts have their parameters filled in.
 *
 * @param id unique: {@code project/made/make-number/key}
 * @param made the part or joint
 * @param make the make number, from 1
 * @param key the key within the recipe
 * @param recipe the recipe
 * @param kind what sort of work
 * @param title what the card is headed
 * @param say instructions in order
 * @param checks what is checked, each with its limit
 * @param record what is written down
 * @param cautions keys of the caution table: the recipe's, and those of the systems and materials it uses
 * @param signed whether it needs a signature before what follows
 * @param whichWay whether the card asks which way round before the hands begin
 * @param stage the lay-up stage; 0 for none
 * @param plies the plies and core it lays, in order
 * @param mixes what is mixed for it
 * @param batches the same in batches, for the least crew at the temperature expected before anything is planned
 * @param bag the bag that is drawn for it
 * @param needs what is drawn from the stores, one entry for each thing
 * @param personMinutes hands-on time at the least crew
 * @param hands how the hands-on time came about, one figure for each rate and one for the sum
 * @param windows what it waits for, in words
 * @param findings what it says about the work
 * @param work the same for the planner
 */
public record StepResult(
        String id,
        String made,
        int make,
        String key,
        String recipe,
        StepKind kind,
        String title,
        List<String> say,
        List<String> checks,
        List<String> record,
        List<String> cautions,
        boolean signed,
        boolean whichWay,
        int stage,
        List<PlyCut> plies,
        List<StepMix> mixes,
        List<MixList> batches,
        Optional<BagStack> bag,
        List<Need> needs,
        int personMinutes,
        List<Figure> hands,
        List<StepWindow> windows,
        List<Finding> findings,
        WorkStep work) {
    /** Copies the lists. */
    public StepResult {
        say = List.copyOf(say);
        checks = List.copyOf(checks);
        record = List.copyOf(record);
        cautions = List.copyOf(cautions);
        plies = List.copyOf(plies);
        mixes = List.copyOf(mixes);
        batches = List.copyOf(batches);
        needs = List.copyOf(needs);
        hands = List.copyOf(hands);
        windows = List.copyOf(windows);
        findings = List.copyOf(findings);
    }

    /** The step within its project: {@code made/make-number/key}. */
    public String local() {
        return made + "/" + make + "/" + key;
    }
}
