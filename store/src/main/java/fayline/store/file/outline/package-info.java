/**
 * Plane outlines from corner lists, drawings and airfoils. x and y as in the drawing; curves are flattened so that no chord is
 * further from its curve than 0.05 mm. Start at {@link fayline.store.file.outline.OutlineReader}. Drawing does not belong here.
 */
@NullMarked
package fayline.store.file.outline;

import org.jspecify.annotations.NullMarked;
