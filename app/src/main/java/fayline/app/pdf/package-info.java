/**
 * Paper: cards as PDF with the bundled font, drawings in true millimetres and a code that opens each card; and templates
 * of a trim in true size, {@link fayline.app.pdf.TemplatePdf}. Start at {@link
 * fayline.app.pdf.CardsPdf}. The worded card, {@link fayline.app.pdf.CardSheet}, serves the screen too. What does not belong
 * here: anything computed about the work.
 */
@NullMarked
package fayline.app.pdf;

import org.jspecify.annotations.NullMarked;
