/**
 * What finished steps teach about rates: hours booked from starts and finishes, learned factors put on steps to do. Start at
 * {@link fayline.flow.result.rate.LearnedRates}. How factors are estimated stands in {@link fayline.method.rate}.
 */
@NullMarked
package fayline.flow.result.rate;

import org.jspecify.annotations.NullMarked;
