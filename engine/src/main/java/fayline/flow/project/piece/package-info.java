/**
 * Like pieces made in sets: which divisions there are, and a definition in one of them. Start at {@link
 * fayline.flow.project.piece.Division}. Choosing among divisions is planning and does not belong here.
 */
@NullMarked
package fayline.flow.project.piece;

import org.jspecify.annotations.NullMarked;
