/**
 * What tests of a few pieces allow: tolerance factors of the normal distribution and a lower bound that most of all pieces will
 * bear [cmh17]. Start at {@link fayline.method.allowable.AllowableCalculator}. What does not belong here: how pieces are made,
 * and which of them stand for which part.
 */
@NullMarked
package fayline.method.allowable;

import org.jspecify.annotations.NullMarked;
