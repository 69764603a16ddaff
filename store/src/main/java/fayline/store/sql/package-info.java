/**
 * The record in a database: SQLite in the data folder, or PostgreSQL where the folder names one. Start at
 * {@link fayline.store.sql.DataFolder}. One thread writes; one INSERT carries one whole entry; after any database error the
 * connection is dropped and the client id decides what became of the entry. What an entry means is decided in
 * {@code fayline.flow.record}, not here.
 */
@NullMarked
package fayline.store.sql;

import org.jspecify.annotations.NullMarked;
