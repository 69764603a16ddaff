/** Tests of what entries hold. */
@NullMarked
package fayline.flow.record.payload;

import org.jspecify.annotations.NullMarked;
