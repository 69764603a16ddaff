/** Tests of backups, restoring and the check of records. */
@NullMarked
package fayline.app.usecase.archive;

import org.jspecify.annotations.NullMarked;
