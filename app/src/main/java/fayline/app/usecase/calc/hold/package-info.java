/**
 * Topics that ask whether something holds: sheets and panels under pressure, joints, what tests allow. Start at
 * {@link fayline.app.usecase.calc.hold.HoldTopics}. What does not belong here: formulas, which live in the engine.
 */
@NullMarked
package fayline.app.usecase.calc.hold;

import org.jspecify.annotations.NullMarked;
