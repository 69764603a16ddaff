/**
 * What readings of one kind tell when they come again and again: limits of single readings and of means of small groups
 * [nist-handbook], a moving average that sees slow drift, quantiles [hyndman-fan1996], and the trend on several causes at once. Start at
 * {@link fayline.method.chart.IndividualsChart}. What a reading was of is no concern of this package.
 */
@NullMarked
package fayline.method.chart;

import org.jspecify.annotations.NullMarked;
