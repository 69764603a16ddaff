/** The stores: what is held, what runs out, what to order by when. Start at {@link fayline.app.web.stores.StoresPage}. */
@NullMarked
package fayline.app.web.stores;

import org.jspecify.annotations.NullMarked;
