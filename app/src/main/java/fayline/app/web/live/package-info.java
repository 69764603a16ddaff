/**
 * Tells open pages that the record has grown. Start at {@link fayline.app.web.live.LivePage}. What does not belong here: what is new;
 * a page asks for that in its reader's own way and as far as its reader may see it.
 */
@NullMarked
package fayline.app.web.live;

import org.jspecify.annotations.NullMarked;
