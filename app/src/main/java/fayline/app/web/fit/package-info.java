/**
 * The pages of fits: all of them with how they stand, one with the answer in plain words, and the entry of readings at the bench.
 * Start at {@link fayline.app.web.fit.FitPage}. Lengths are shown in the screen's units; a reading is shown as it was typed. What
 * does not belong here: anything that is computed from readings, which is {@code flow.result.fit}'s.
 */
@NullMarked
package fayline.app.web.fit;

import org.jspecify.annotations.NullMarked;
