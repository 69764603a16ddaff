package fayline.flow.result.cost;

import java.util.OptionalDouble;

/**
 * What a part, joint, assembly or the whole costs.
 *
 * @param id its id; of the whole the project's
 * @param name its name
 * @param in the assembly it belongs to; empty for none
 * @param toDate what was spent
 * @param toGo what is still to be spent, as far as it is known
 * @param budget its budget, where one is written
 */
public record CostRow(String id, String name, String in, Cost toDate, Cost toGo, OptionalDouble budget) {
    /** What it will have cost. */
    public Cost atCompletion() {
        return toDate.plus(toGo);
    }

    /** What the budget leaves; negative where it is overrun. Empty where there is none. */
    public OptionalDouble left() {
        return budget.isPresent()
                ? OptionalDouble.of(budget.getAsDouble() - atCompletion().all())
                : OptionalDouble.empty();
    }
}
