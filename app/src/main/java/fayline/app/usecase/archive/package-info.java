/**
 * The record carried away and back: backups, archives for handing over, restoring, and the check of any of them. Start at
 * {@link fayline.app.usecase.archive.BackUpRecord}. What an archive looks like inside belongs to the store.
 */
@NullMarked
package fayline.app.usecase.archive;

import org.jspecify.annotations.NullMarked;
