/**
 * Laminates of a project asked whether they are good enough, and invented ones to measure by. Start at {@link
 * fayline.app.usecase.laminate.SampleLaminate}.
 */
@NullMarked
package fayline.app.usecase.laminate;

import org.jspecify.annotations.NullMarked;
