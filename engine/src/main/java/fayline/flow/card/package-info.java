/**
 * What one or more people need to do one step, whole in itself: amounts, order, places, checks, cautions, which way round.
 * Start at {@link fayline.flow.card.CardMaker}, which makes a {@link fayline.flow.card.Card}. How a card looks does not belong
 * here.
 */
@NullMarked
package fayline.flow.card;

import org.jspecify.annotations.NullMarked;
