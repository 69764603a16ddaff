/**
 * When a mixed system reaches each state. Start at {@link fayline.method.cure.CureSheet}, what is known of a system. Times are
 * from mixing. What does not belong here: the parts and plans that wait for a cure.
 */
@NullMarked
package fayline.method.cure;

import org.jspecify.annotations.NullMarked;
