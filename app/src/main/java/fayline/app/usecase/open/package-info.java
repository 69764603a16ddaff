/**
 * A shop's data folder: opened for one running program, and checked by anyone. Start at
 * {@link fayline.app.usecase.open.OpenShop}.
 */
@NullMarked
package fayline.app.usecase.open;

import org.jspecify.annotations.NullMarked;
