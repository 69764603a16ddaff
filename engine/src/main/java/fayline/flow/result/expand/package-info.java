/**
 * Makes steps of recipes. Start at {@link fayline.flow.result.expand.StepExpander}. What a step is stands in
 * {@code flow.result.step}. It holds more than fifteen types because a recipe's parameters, its order and its amounts are known
 * to each other and to nobody else.
 */
@NullMarked
package fayline.flow.result.expand;

import org.jspecify.annotations.NullMarked;
