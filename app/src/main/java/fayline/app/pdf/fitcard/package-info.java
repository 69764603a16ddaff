/**
 * The card of a fit in words and on paper. Start at {@link fayline.app.pdf.fitcard.FitCardWords}, which makes a {@link
 * fayline.app.pdf.fitcard.FitSheet} for screen and paper alike; {@link fayline.app.pdf.fitcard.FitCardPdf} prints it. What does
 * not belong here: anything computed about the fit.
 */
@NullMarked
package fayline.app.pdf.fitcard;

import org.jspecify.annotations.NullMarked;
