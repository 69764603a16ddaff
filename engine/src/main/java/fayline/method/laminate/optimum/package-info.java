/**
 * The lightest stack of allowed plies that is stiff and strong enough, proven by enumeration with bounds that hold [land-doig1960]. Start at {@link
 * fayline.method.laminate.optimum.LightestStackCalculator}. Stacks are symmetric and grow from the middle outwards, so that what
 * is there already does not change when a ply is added. What does not belong here: which plies exist in the shop.
 */
@NullMarked
package fayline.method.laminate.optimum;

import org.jspecify.annotations.NullMarked;
