/**
 * Where the program begins. Start at {@link fayline.app.Main}, which joins command line, pages, store and benches in plain
 * sight. Nothing else belongs here.
 */
@NullMarked
package fayline.app;

import org.jspecify.annotations.NullMarked;
