/**
 * Changes of the design as pages show them: raised, worked out, decided, settled thing by thing, closed. Start at
 * {@link fayline.app.web.change.ChangesPage}. What is checked and what follows does not belong here.
 */
@NullMarked
package fayline.app.web.change;

import org.jspecify.annotations.NullMarked;
