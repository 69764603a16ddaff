/**
 * Personal text that was taken out of the record: what may be, and what was, by whom and why. Start at
 * {@link fayline.flow.record.erasure.Erasable}. Work, readings and signatures are never erased and do not belong here.
 */
@NullMarked
package fayline.flow.record.erasure;

import org.jspecify.annotations.NullMarked;
