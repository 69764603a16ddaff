/**
 * The subjects a script can ask about. Start at {@link fayline.app.usecase.calc.topic.Topics}. Each joins named terms to
 * calculators of the engine; no formula stands here.
 */
@NullMarked
package fayline.app.usecase.calc.topic;

import org.jspecify.annotations.NullMarked;
