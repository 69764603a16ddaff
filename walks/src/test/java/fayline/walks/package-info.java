/**
 * The product driven in a real browser as a user drives it. Start at {@link fayline.walks.Shopfloor}, which starts the real
 * program with a data folder of its own. Never shipped.
 */
@NullMarked
package fayline.walks;

import org.jspecify.annotations.NullMarked;
