/**
 * Pages of hours: by person, part and sort of work, and the builder's share. Start at {@link fayline.app.web.hours.HoursPage}.
 */
@NullMarked
package fayline.app.web.hours;

import org.jspecify.annotations.NullMarked;
