/**
 * What a project says of a chain of bonds: a part that reaches its place through several, on benches and on the airframe. Start at
 * {@link fayline.flow.project.chain.FitChain}. Each link has its own frame, in mm, seen from the same side as the frame of the fit
 * in which the chain ends. What does not belong here: how likely the last gaps are, which is {@code flow.result.fit.chain}'s.
 */
@NullMarked
package fayline.flow.project.chain;

import org.jspecify.annotations.NullMarked;
