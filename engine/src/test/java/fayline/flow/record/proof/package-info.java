/** Tests of the record's proofs. */
@NullMarked
package fayline.flow.record.proof;

import org.jspecify.annotations.NullMarked;
