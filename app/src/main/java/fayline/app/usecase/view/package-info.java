/**
 * What the shop looks like at a moment: definition, results, plan, audit, and what moved. Start at
 * {@link fayline.app.usecase.view.LookAtShop} for a shop's record and {@link fayline.app.usecase.view.ReadFolder} for a bare
 * folder; both give a {@link fayline.app.usecase.view.ShopView}.
 */
@NullMarked
package fayline.app.usecase.view;

import org.jspecify.annotations.NullMarked;
