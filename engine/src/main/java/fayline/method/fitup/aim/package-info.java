/**
 * The ways to judge a rigid move of a part side by side: the worst error least, the errors evened out, every reading as far inside
 * its limits as can be, the part moved as little as needed. Start at {@link fayline.method.fitup.aim.AimedMovesCalculator}. Frame and
 * signs as in {@code fayline.method.fitup}. The searches are those of {@code fayline.method.fitup.move} [lemke1954], [lawson1974],
 * [goldfarb1983]. Which way is recommended, and what a reader chooses, does not belong here.
 */
@NullMarked
package fayline.method.fitup.aim;

import org.jspecify.annotations.NullMarked;
