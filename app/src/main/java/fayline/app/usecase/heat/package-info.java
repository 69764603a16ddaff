/**
 * Asks whether a part may be heated as planned. Start at {@link fayline.app.usecase.heat.CheckHeat}. The method stands in
 * {@code method.cure.reaction}; pages do not belong here.
 */
@NullMarked
package fayline.app.usecase.heat;

import org.jspecify.annotations.NullMarked;
