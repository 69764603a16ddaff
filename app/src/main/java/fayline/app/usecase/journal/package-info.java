/**
 * The record as people read it: what each entry changed, before and after, and the sheets on which its head is kept outside.
 * Start at {@link fayline.app.usecase.journal.Journal}. Words of pages do not belong here.
 */
@NullMarked
package fayline.app.usecase.journal;

import org.jspecify.annotations.NullMarked;
