/**
 * Topics of what goes inside before the structure is closed: lines and drive. Start at
 * {@link fayline.app.usecase.calc.system.SystemTopics}. What does not belong here: formulas, which live in the engine.
 */
@NullMarked
package fayline.app.usecase.calc.system;

import org.jspecify.annotations.NullMarked;
