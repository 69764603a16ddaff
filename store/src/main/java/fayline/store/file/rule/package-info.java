/**
 * What must hold between the files of a definition: references, trees, orders, and what the shop can do at all. Start at
 * {@link fayline.store.file.rule.Draft}. What a single key may hold does not belong here.
 */
@NullMarked
package fayline.store.file.rule;

import org.jspecify.annotations.NullMarked;
