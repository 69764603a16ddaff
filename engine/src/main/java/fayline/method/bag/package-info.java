/**
 * What a vacuum bag uses up. Start at {@link fayline.method.bag.BagStackCalculator}. From the part outward: ply, peel ply,
 * perforated film, breather, bag, sealed with tape [ac43-13-1b] par. 3-4. Area with margin of a convex outline after Steiner
 * [steiner1840]; margins, pleats and ports are common practice, no source, and always inputs. What does not belong here: prices
 * and stock.
 */
@NullMarked
package fayline.method.bag;

import org.jspecify.annotations.NullMarked;
