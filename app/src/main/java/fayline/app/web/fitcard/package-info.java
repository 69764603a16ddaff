/**
 * Pages of a fit on the day of the adhesive: its card, on screen and paper, and the trial that says to which width a sprung frame
 * is set. Start at {@link fayline.app.web.fitcard.FitCardPage} and {@link fayline.app.web.fitcard.FitFramePage}. Nothing is
 * computed here.
 */
@NullMarked
package fayline.app.web.fitcard;

import org.jspecify.annotations.NullMarked;
