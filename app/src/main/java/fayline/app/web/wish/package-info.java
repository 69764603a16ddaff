/**
 * What the lead decides about steps beforehand: who, where and when. Start at {@link fayline.app.web.wish.WishStepPage} for one step
 * and at {@link fayline.app.web.wish.WishesPage} for all that is wished. Planning does not belong here.
 */
@NullMarked
package fayline.app.web.wish;

import org.jspecify.annotations.NullMarked;
