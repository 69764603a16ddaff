package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the rules of every database must refuse, and what a check must find where somebody took the rules off. */
interface EntryRulesContract {
    /** The folder in which the database is. */
    Path folder();

    /** Takes the rules off the entry table, as an owner of the machine could. */
    List<String> statementsThatDropTheRules();

    private void sql(String... statements) throws SQLException {
        DirectSql.run(folder(), statements);
    }

    @Test
    default void should_refuse_when_the_record_is_changed_removed_or_broken_by_sql() throws SQLException {
        Entry last;
        try (DataFolder shop = DataFolder.open(folder())) {
            shop.log()
                    .append(List.of(
                            EntryLogContract.note("client-0001", "one"), EntryLogContract.note("client-0002", "two")));
            last = shop.log().read(2).get(0);
        }
        String columns = "insert into entry (seq, version, client_id, who, phone_at, taken_at, project, kind, payload,"
                + " payload_hash, files, previous, hash) values ";
        String rest = ", 'x', '', '', '', 'k', '{}', 'p', '', '";
        for (String bad : List.of(
                "update entry set who = 'bo' where seq = 1",
                "delete from entry where seq = 2",
                columns + "(4, 1, 'client-0009'" + rest.replace("'x', ", "'x', ") + last.hash() + "', 'h')",
                columns + "(3, 1, 'client-0009'" + rest + "ff', 'h')",
                columns + "(2, 1, 'client-0009'" + rest + last.hash() + "', 'h')",
                columns + "(3, 1, 'client-0002'" + rest + last.hash() + "', 'h')")) {
            assertThatThrownBy(() -> sql(bad)).as(bad).isInstanceOf(SQLException.class);
        }
        assertThat(RecordCheck.check(folder(), Optional.empty()).fault()).isEmpty();
        sql(columns + "(3, 1, 'client-0003'" + rest + last.hash() + "', 'h')");
        assertThat(RecordCheck.check(folder(), Optional.empty())
                        .fault()
                        .orElseThrow()
                        .seq())
                .isEqualTo(3);
    }

    @Test
    default void should_name_the_first_bad_entry_when_any_column_is_changed_behind_the_rules() throws SQLException {
        try (DataFolder shop = DataFolder.open(folder())) {
            for (int i = 1; i <= 9; i++) {
                shop.log().append(EntryLogContract.note("client-000" + i, "note " + i));
            }
        }
        sql(statementsThatDropTheRules().toArray(String[]::new));
        List<String> changes = List.of(
                "version = version + 1",
                "client_id = 'other-client'",
                "who = 'bo'",
                "phone_at = 'x'",
                "taken_at = 'x'",
                "project = 'x'",
                "kind = 'step-started'",
                "payload = replace(payload, 'note', 'vote')",
                "payload_hash = replace(payload_hash, substr(payload_hash, 1, 1), '!')",
                "files = ' '",
                "previous = hash",
                "hash = previous");
        for (String change : changes) {
            sql("create table copy_of_entry as select * from entry", "update entry set " + change + " where seq = 5");
            assertThat(RecordCheck.check(folder(), Optional.empty())
                            .fault()
                            .orElseThrow()
                            .seq())
                    .as(change)
                    .isEqualTo(5);
            sql(
                    "delete from entry",
                    "insert into entry select * from copy_of_entry order by seq",
                    "drop table copy_of_entry");
            assertThat(RecordCheck.check(folder(), Optional.empty()).fault()).isEmpty();
        }
        sql(
                "update entry set seq = 100 where seq = 3",
                "update entry set seq = 3 where seq = 4",
                "update entry set seq = 4 where seq = 100");
        assertThat(RecordCheck.check(folder(), Optional.empty())
                        .fault()
                        .orElseThrow()
                        .seq())
                .isEqualTo(3);
        sql(
                "update entry set seq = 100 where seq = 3",
                "update entry set seq = 3 where seq = 4",
                "update entry set seq = 4 where seq = 100");
        sql("delete from entry where seq > 7");
        Chain.Fault cut = RecordCheck.check(folder(), Optional.empty()).fault().orElseThrow();
        assertThat(cut.seq()).isEqualTo(8);
        assertThat(cut.what()).contains("missing");
        sql("delete from entry where seq = 2");
        assertThat(RecordCheck.check(folder(), Optional.empty())
                        .fault()
                        .orElseThrow()
                        .seq())
                .isEqualTo(2);
    }
}
