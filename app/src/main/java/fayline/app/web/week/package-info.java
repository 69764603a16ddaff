/**
 * The page on which what is told of a week is drafted, edited and settled. Start at {@link fayline.app.web.week.WeekPage}.
 */
@NullMarked
package fayline.app.web.week;

import org.jspecify.annotations.NullMarked;
