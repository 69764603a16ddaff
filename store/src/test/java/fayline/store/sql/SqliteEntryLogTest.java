package fayline.store.sql;

import java.nio.file.Path;
import java.util.List;

/** The contract on SQLite. */
class SqliteEntryLogTest extends EntryLogContract implements PeopleTablesContract, EntryFilesContract, ErasureContract {
    @Override
    void prepare(Path fresh) {
        // A folder without anything in it is SQLite's.
    }

    @Override
    List<String> statementsThatDropTheRules() {
        return List.of(
                "drop trigger entry_is_never_changed",
                "drop trigger entry_is_never_removed",
                "drop trigger entry_follows_the_last");
    }
}
