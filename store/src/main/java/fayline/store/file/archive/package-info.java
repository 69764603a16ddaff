/**
 * The record as one file that can be carried away: a ZIP of plain texts with a manifest of hashes, readable without this
 * program, for backups and for handing over. The form is described in {@code docs/record-format/README.md}. Start at
 * {@link fayline.store.file.archive.RecordArchive}. Databases do not belong here.
 */
@NullMarked
package fayline.store.file.archive;

import org.jspecify.annotations.NullMarked;
