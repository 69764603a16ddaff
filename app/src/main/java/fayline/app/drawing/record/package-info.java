/**
 * Drawings of what was read, for books and charts. Start at {@link fayline.app.drawing.record.ReadingsDrawing}. What a reading
 * means does not belong here.
 */
@NullMarked
package fayline.app.drawing.record;

import org.jspecify.annotations.NullMarked;
