/**
 * A search for a better plan, seen while it runs. Start at {@link fayline.app.web.better.BetterPage}.
 */
@NullMarked
package fayline.app.web.better;

import org.jspecify.annotations.NullMarked;
