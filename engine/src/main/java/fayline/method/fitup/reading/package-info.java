/**
 * From what a gauge shows to a gap and how sure it is, station by station, and which readings to take again. Start at
 * {@link fayline.method.fitup.reading.ReadingCalculator} and {@link fayline.method.fitup.reading.SuspectReadingsCalculator}.
 *
 * <p>Lengths in millimetres, angles in radians. A gap is positive where there is room. Deviations are standard uncertainties: a
 * pair of limits counts as a rectangular spread [jcgm100]; what two readings of one hand share is kept apart, because repeats do
 * not remove it. What does not belong here: the correction to a reference temperature (a caller shifts the gap by
 * {@link fayline.method.fitup.reading.StationGap#corrected}), and dropping a reading, which nobody but the reader may do.
 */
@NullMarked
package fayline.method.fitup.reading;

import org.jspecify.annotations.NullMarked;
