/**
 * Calculations for scripts: one JSON object in, one out. Start at {@link fayline.app.usecase.calc.CalcTopic}. A topic is
 * mostly a list of {@link fayline.app.usecase.calc.Relation}s over named {@link fayline.app.usecase.calc.Term}s; what can be
 * reckoned from what was given is reckoned. What does not belong here: formulas, which live in the engine, and the topics
 * themselves.
 */
@NullMarked
package fayline.app.usecase.calc;

import org.jspecify.annotations.NullMarked;
