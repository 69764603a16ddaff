/**
 * Looks at fits: readings from the record, the opposite hand's lessons, everything that follows. Start at
 * {@link fayline.app.usecase.fit.LookAtFits}. What does not belong here: what a fit's answer is, which is {@code flow.result.fit}'s.
 */
@NullMarked
package fayline.app.usecase.fit;

import org.jspecify.annotations.NullMarked;
