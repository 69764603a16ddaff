/**
 * Nets of activities read from the two plain-text forms that public scheduling sets use, and the table of what is known of them.
 * Start at {@link fayline.store.file.net.NetSets}. The sets themselves are no part of the program. How a net is scheduled does
 * not belong here.
 */
@NullMarked
package fayline.store.file.net;

import org.jspecify.annotations.NullMarked;
