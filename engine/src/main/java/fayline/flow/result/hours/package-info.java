/**
 * Who worked how long on what, and what share of the work was the builder's own. Start at
 * {@link fayline.flow.result.hours.HoursCalculator}. How time is booked from starts and finishes is told in
 * {@link fayline.flow.result.rate.BookedHours}; which tasks count is data of the project.
 */
@NullMarked
package fayline.flow.result.hours;

import org.jspecify.annotations.NullMarked;
