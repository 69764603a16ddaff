/**
 * Recipes made into steps on real parts: who is needed for how long, what it takes, what it waits for. Start at
 * {@link fayline.flow.result.step.StepResult}. When a step happens does not belong here.
 */
@NullMarked
package fayline.flow.result.step;

import org.jspecify.annotations.NullMarked;
