/**
 * Whether a laminate of the project bears what an engineer entered, from its real plies. Start at {@link
 * fayline.flow.result.laminate.LaminateCheckCalculator}. Computed anew whenever it is asked, so that a changed ply, material or load
 * changes the answer. What does not belong here: the mechanics ({@code method.laminate}).
 */
@NullMarked
package fayline.flow.result.laminate;

import org.jspecify.annotations.NullMarked;
