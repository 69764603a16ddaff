/**
 * Looks for a better plan while the shop goes on. Start at {@link fayline.app.usecase.better.ImprovePlan}. What a better plan is
 * worth, and how it is found, do not belong here.
 */
@NullMarked
package fayline.app.usecase.better;

import org.jspecify.annotations.NullMarked;
