/**
 * What a change of the design touches. Start at {@link fayline.flow.result.change.ReachCalculator}: from what is altered it finds what is
 * made otherwise and what hangs on that, made or not. What was decided about it does not belong here: the record holds that.
 *
 * <p>Method: the references that the definition's files hold are followed, common practice in configuration management (evaluation
 * of a change, ISO 10007:2017, 5.4.3, from memory); nothing is measured.
 */
@NullMarked
package fayline.flow.result.change;

import org.jspecify.annotations.NullMarked;
