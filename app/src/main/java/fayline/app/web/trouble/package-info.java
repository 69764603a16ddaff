/**
 * Deviations as pages show them: raised on a card, listed, decided. Start at {@link fayline.app.web.trouble.DeviationsPage}. What is
 * checked and what waits does not belong here.
 */
@NullMarked
package fayline.app.web.trouble;

import org.jspecify.annotations.NullMarked;
