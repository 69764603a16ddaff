/**
 * The card at the bench: everything a step takes, and its start, finish, notes, readings and corrections. Start at {@link
 * fayline.app.web.card.CardPage}.
 */
@NullMarked
package fayline.app.web.card;

import org.jspecify.annotations.NullMarked;
