/**
 * What a project says of a frame that is clamped and springs: the widths that are tried at the bench. Start at {@link
 * fayline.flow.project.fit.frame.FitFrame}. Widths are told in mm. What does not belong here: readings, which are the record's,
 * and answers, which are {@code flow.result.fit.frame}'s.
 */
@NullMarked
package fayline.flow.project.fit.frame;

import org.jspecify.annotations.NullMarked;
