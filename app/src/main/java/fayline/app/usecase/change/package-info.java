/**
 * A change of the design from raising to closing: what it touches, what is decided, what became of each thing. Start at
 * {@link fayline.app.usecase.change.FollowChange}; {@link fayline.app.usecase.change.CheckPrint} tells whether something printed still
 * holds.
 */
@NullMarked
package fayline.app.usecase.change;

import org.jspecify.annotations.NullMarked;
