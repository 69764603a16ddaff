/**
 * What came out other than drawn, and what was decided about it. Start at {@link fayline.flow.record.trouble.TroubleState};
 * {@link fayline.flow.record.trouble.TroubleFold} is how entries become it. Which steps wait for an open one does not belong here:
 * that follows from the work.
 */
@NullMarked
package fayline.flow.record.trouble;

import org.jspecify.annotations.NullMarked;
