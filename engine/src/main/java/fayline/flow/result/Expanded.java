package fayline.flow.result;

import fayline.flow.project.Definition;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.expand.Expansion;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.List;

/**
 * A project whose recipes are made into steps at their own rates: what rates are learned from, and what all else follows from.
 *
 * @param whole the definition as it was read
 * @param definition the same with its pieces in their sets
 * @param state what has happened
 * @param air the shop's air
 * @param clocks the clocks on which its spans run
 * @param expansion the steps and what they hold
 */
public record Expanded(
        Definition whole, Definition definition, ShopState state, ShopAir air, ClockBook clocks, Expansion expansion) {
    /** The steps at the recipes' own rates, in the order of the definition. */
    public List<StepResult> steps() {
        return expansion.steps();
    }
}
