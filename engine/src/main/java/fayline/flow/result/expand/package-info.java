/**
 * Makes steps of recipes. Start at {@link fayline.flow.result.expand.StepExpander}. What a step is stands in
 * {@code flow.result.step}.
 */
@NullMarked
package fayline.flow.result.expand;

import org.jspecify.annotations.NullMarked;
