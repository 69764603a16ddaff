/**
 * What the product says about its own figures: findings of a computation, problems of an input, and how a figure came about.
 * Start at {@link fayline.basis.finding.Finding}. No wording of a single method belongs here.
 */
@NullMarked
package fayline.basis.finding;

import org.jspecify.annotations.NullMarked;
