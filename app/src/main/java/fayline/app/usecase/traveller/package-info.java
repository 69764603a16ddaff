/**
 * What goes into a step: lots drawn, cups mixed, plies laid, each checked and entered. Start at
 * {@link fayline.app.usecase.traveller.LayPly}. What a step should have comes from the results as
 * {@link fayline.app.usecase.traveller.StepAsks}; what it means for the stores does not belong here.
 */
@NullMarked
package fayline.app.usecase.traveller;

import org.jspecify.annotations.NullMarked;
