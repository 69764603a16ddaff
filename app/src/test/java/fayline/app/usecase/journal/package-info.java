/** Tests of the record as people read it. */
@NullMarked
package fayline.app.usecase.journal;

import org.jspecify.annotations.NullMarked;
