/**
 * A chain of bonds on paper, for the bench: drawn, where the correction goes, and the stations in the bench's own axes. Start at
 * {@link fayline.app.pdf.chain.ChainPdf}. What does not belong here: what the answer is, and how it is worded.
 */
@NullMarked
package fayline.app.pdf.chain;

import org.jspecify.annotations.NullMarked;
