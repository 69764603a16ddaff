/** Laminates on a page: whether they bear what was entered, and why. Start at {@link fayline.app.web.laminate.LaminatePage}. */
@NullMarked
package fayline.app.web.laminate;

import org.jspecify.annotations.NullMarked;
