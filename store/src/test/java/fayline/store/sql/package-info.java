/** Tests of the record in a database. Start at {@link fayline.store.sql.EntryLogContract}. */
@org.jspecify.annotations.NullMarked
package fayline.store.sql;
