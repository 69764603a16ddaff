/**
 * What follows for a frame that springs: from the widths read at the bench the bare width to set before adhesive, and what one
 * hand teaches the other. Start at {@link fayline.flow.result.fit.frame.WidthsCalculator}. The methods and their sources are
 * those of {@code method.fitup.frame}. What does not belong here: formulas, and pictures.
 */
@NullMarked
package fayline.flow.result.fit.frame;

import org.jspecify.annotations.NullMarked;
