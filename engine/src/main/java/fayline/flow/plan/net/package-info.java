/**
 * A net of activities and its schedule, as values: durations, lags, resources, and nothing of a shop. Start at {@link
 * fayline.flow.plan.net.Net}. Time is in whole units of the net's own, counted from 0. How a schedule is found does not belong
 * here.
 */
@NullMarked
package fayline.flow.plan.net;

import org.jspecify.annotations.NullMarked;
