/**
 * Drawings in millimetres, made once and rendered for the screen and for paper. Start at {@link
 * fayline.app.drawing.Drawing}. Coordinates run from the upper left corner, x to the right, y down; angles are positive
 * anticlockwise as seen, from the x direction. What does not belong here: markup of pages, and anything computed about the
 * work.
 */
@NullMarked
package fayline.app.drawing;

import org.jspecify.annotations.NullMarked;
