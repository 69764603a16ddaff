/**
 * Readings understood: what was typed beside what it means. Start at {@link fayline.flow.reading.FitReadings}. What does not
 * belong here: what follows from them, which is {@code flow.result}'s.
 */
@NullMarked
package fayline.flow.reading;

import org.jspecify.annotations.NullMarked;
