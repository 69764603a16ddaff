/** Tests of charts of readings. */
@NullMarked
package fayline.method.chart;

import org.jspecify.annotations.NullMarked;
