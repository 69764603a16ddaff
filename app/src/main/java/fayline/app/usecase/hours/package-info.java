/**
 * The hours of a project as people look at them. Start at {@link fayline.app.usecase.hours.LookAtHours}. How they are counted
 * belongs to the engine.
 */
@NullMarked
package fayline.app.usecase.hours;

import org.jspecify.annotations.NullMarked;
