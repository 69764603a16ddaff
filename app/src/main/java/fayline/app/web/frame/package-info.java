/**
 * What every page shares: who looks, in which units and theme, what stands around the page, how times are worded, and the
 * checks at the door. Start at {@link fayline.app.web.frame.Visit}. No single page belongs here.
 */
@NullMarked
package fayline.app.web.frame;

import org.jspecify.annotations.NullMarked;
