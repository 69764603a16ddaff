/**
 * Alterations of the design, from raising to closing. Start at {@link fayline.flow.record.change.ChangeState};
 * {@link fayline.flow.record.change.ChangeFold} is how entries become it. What hangs on what is touched does not belong here: that
 * follows from the definition.
 */
@NullMarked
package fayline.flow.record.change;

import org.jspecify.annotations.NullMarked;
