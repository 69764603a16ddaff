/**
 * Lots by themselves: received, moved, counted, followed into parts and back, labelled. Start at {@link fayline.app.web.lots.LotPage} and
 * {@link fayline.app.web.lots.CountPage}. What the stores hold against the work is on {@code web.stores}.
 */
@NullMarked
package fayline.app.web.lots;

import org.jspecify.annotations.NullMarked;
