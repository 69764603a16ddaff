/**
 * Pages of what is made and how: the airframe's tree, parts, joints, recipes. Start at {@link
 * fayline.app.web.design.AirframePage}. Nothing is computed here but sums of shown progress.
 */
@NullMarked
package fayline.app.web.design;

import org.jspecify.annotations.NullMarked;
