/**
 * The page of a chain of bonds: which link spends the tolerance, where a correction goes, what is left after the cure. Start at
 * {@link fayline.app.web.chain.ChainPage}. What does not belong here: what the answer is, which is
 * {@code flow.result.fit.chain}'s.
 */
@NullMarked
package fayline.app.web.chain;

import org.jspecify.annotations.NullMarked;
