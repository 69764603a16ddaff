/**
 * What a project says of a frame that is clamped and springs: the widths that are tried at the bench, and the frame as beams with
 * its clamps, adhesive, latch pins and hinge points. Start at {@link fayline.flow.project.fit.frame.FitFrame}. Places are in the
 * part's frame, out positive away from the aircraft, in mm; moduli in MPa. What does not belong here: readings, which are the
 * record's, and answers, which are {@code flow.result.fit.frame}'s.
 */
@NullMarked
package fayline.flow.project.fit.frame;

import org.jspecify.annotations.NullMarked;
