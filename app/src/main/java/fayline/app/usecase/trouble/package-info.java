/**
 * What came out other than drawn: raised at the bench, decided by the lead, and what waits for it. Start at
 * {@link fayline.app.usecase.trouble.RaiseDeviation}.
 */
@NullMarked
package fayline.app.usecase.trouble;

import org.jspecify.annotations.NullMarked;
