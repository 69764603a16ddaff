/**
 * Definition folders in and out of the record, with what has happened. Start at
 * {@link fayline.app.usecase.folder.ImportFolder} and {@link fayline.app.usecase.folder.ExportFolder}.
 */
@NullMarked
package fayline.app.usecase.folder;

import org.jspecify.annotations.NullMarked;
