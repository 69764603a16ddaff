/**
 * What a project says of a fit: the edge, its stations, what is wanted there, the states it goes through, how it may be held,
 * shimmed, cut, heated. Start at {@link fayline.flow.project.fit.Fit}. Places are in the part's frame (x aft on a left part,
 * forward on a right one; y up; seen from outside), in mm. What does not belong here: readings, which are the record's, and
 * answers, which are {@code flow.result.fit}'s.
 */
@NullMarked
package fayline.flow.project.fit;

import org.jspecify.annotations.NullMarked;
