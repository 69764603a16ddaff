/**
 * What went into a step, as the bench told it: lots drawn, mixes weighed, plies laid. Start at
 * {@link fayline.flow.record.made.MadeState}; {@link fayline.flow.record.made.MadeFold} is how entries become it. Amounts are texts as
 * typed: what they mean is read where they are used. What a step should have does not belong here.
 */
@NullMarked
package fayline.flow.record.made;

import org.jspecify.annotations.NullMarked;
