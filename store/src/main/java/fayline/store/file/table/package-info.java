/**
 * Tables from comma-separated files. Start at {@link fayline.store.file.table.CsvTable}. What does not belong here: what the
 * columns mean.
 */
@NullMarked
package fayline.store.file.table;

import org.jspecify.annotations.NullMarked;
