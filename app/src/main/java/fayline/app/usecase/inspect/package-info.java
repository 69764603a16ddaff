/**
 * Visits of inspectors: held, what they found, how it was put right, who signed. Start at
 * {@link fayline.app.usecase.inspect.HoldVisit}. What visits amount to belongs to the record.
 */
@NullMarked
package fayline.app.usecase.inspect;

import org.jspecify.annotations.NullMarked;
