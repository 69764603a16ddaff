/**
 * The plan's pages: today by person, and the weeks with their nights. Start at {@link fayline.app.web.plan.TodayPage}.
 * Nothing is planned here.
 */
@NullMarked
package fayline.app.web.plan;

import org.jspecify.annotations.NullMarked;
