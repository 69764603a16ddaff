/**
 * The card of a fit: whether to go on to the adhesive, how to set the part, and what to read before the adhesive gels. Start at
 * {@link fayline.flow.card.fit.FitCardMaker}, which makes a {@link fayline.flow.card.fit.FitCard}. Places and ways are in the
 * frame of the part, in mm. Nothing is computed here that the fit's or the joint's own results hold already; how a card looks
 * does not belong here.
 */
@NullMarked
package fayline.flow.card.fit;

import org.jspecify.annotations.NullMarked;
