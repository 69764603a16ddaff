/**
 * What is told of a week to people outside: drafted from the record, edited, settled. Start at
 * {@link fayline.app.usecase.week.DraftWeek}. How it looks on paper does not belong here.
 */
@NullMarked
package fayline.app.usecase.week;

import org.jspecify.annotations.NullMarked;
