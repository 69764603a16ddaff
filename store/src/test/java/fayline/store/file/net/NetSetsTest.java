package fayline.store.file.net;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Lag;
import fayline.store.file.net.NetSets.Known;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of our own in the two forms and the table's, right and wrong. */
class NetSetsTest {
    private static final String SM = """
            ****************
            file with basedata            : own
            projects                      :  1
            jobs (incl. supersource/sink ):  4
            horizon                       :  9
            RESOURCES
              - renewable                 :  2   R
              - nonrenewable              :  0   N
              - doubly constrained        :  0   D
            ****************
            PRECEDENCE RELATIONS:
            jobnr.    #modes  #successors   successors
               1        1          2           2   3
               2        1          1           4
               3        1          1           4
               4        1          0
            ****************
            REQUESTS/DURATIONS:
            jobnr. mode duration  R 1  R 2
            ------------------------------
              1      1     0       0    0
              2      1     3       1    2
              3      1     4       2    0
              4      1     0       0    0
            ****************
            RESOURCEAVAILABILITIES:
              R 1  R 2
                2    2
            ****************
            """;
    private static final String SCH = """
            2\t1\t0\t0
            0\t1\t2\t1\t2\t[0]\t[0]
            1\t1\t2\t2\t3\t[2]\t[3]
            2\t1\t2\t1\t3\t[-4]\t[2]
            3\t1\t0
            0\t1\t0\t0
            1\t1\t3\t1
            2\t1\t2\t1
            3\t1\t0\t0
            2
            """;
    private static final String TABLE = "set,instance,lower_bound,upper_bound,source\n";

    @TempDir
    Path folder;

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void should_read_sections() throws Exception {
        Net net = NetSets.read(write("own/a.sm", SM));
        assertThat(net.activities()).hasSize(4);
        assertThat(net.activities().get(1).duration()).isEqualTo(3);
        assertThat(net.activities().get(1).demands()).containsExactly(1, 2);
        assertThat(net.lags()).containsExactly(new Lag(0, 1, 0), new Lag(0, 2, 0), new Lag(1, 3, 3), new Lag(2, 3, 4));
        assertThat(net.capacities()).containsExactly(2, 2);
    }

    @Test
    void should_read_lags_in_brackets_and_line_ends_of_either_kind() throws Exception {
        for (String text : List.of(SCH, SCH.replace("\n", "\r\n"))) {
            Net net = NetSets.read(write("own/a.sch", text));
            assertThat(net.lags())
                    .containsExactly(
                            new Lag(0, 1, 0),
                            new Lag(0, 2, 0),
                            new Lag(1, 2, 2),
                            new Lag(1, 3, 3),
                            new Lag(2, 1, -4),
                            new Lag(2, 3, 2));
            assertThat(net.activities().get(1).duration()).isEqualTo(3);
            assertThat(net.capacities()).containsExactly(2);
        }
    }

    @Test
    void should_list_what_the_table_names_and_then_the_rest() throws Exception {
        write("best_known.csv", TABLE + "two,b,3,5,own\none,a,infeasible,infeasible,own\n");
        write("two/b.sch", SCH);
        write("one/a.sm", SM);
        write("one/c.sm", SM);
        write("one/readme.txt", "no net");
        List<NetSets.Entry> list = NetSets.list(folder);
        assertThat(list).extracting(e -> e.set() + "/" + e.instance()).containsExactly("two/b", "one/a", "one/c");
        assertThat(list.get(0).known()).contains(new Known(3, 5, false));
        assertThat(list.get(1).known()).map(Known::infeasible).contains(true);
        assertThat(list.get(2).known()).isEmpty();
        assertThat(NetSets.isAt(folder)).isTrue();
        assertThat(NetSets.isAt(folder.resolve("one"))).isFalse();
    }

    @Test
    void should_say_where_a_file_is_wrong() throws Exception {
        refused(
                "a.sm",
                SM.replace("2      1     3       1    2", "2      1     x       1    2"),
                ":22: durations: found \"x\"");
        refused("a.sm", SM.replace("   2   3\n", "   2   7\n"), ":13: successor: found 7, expected from 1 to 4");
        refused(
                "a.sm",
                SM.replace("   2        1          1           4", "   2        1          2           4"),
                ":14: successors: found 1 numbers, expected 2");
        refused(
                "a.sm",
                SM.replace("nonrenewable              :  0", "nonrenewable              :  1"),
                ":8: nonrenewable: found 1");
        refused(
                "a.sm",
                SM.replace("   3        1          1           4", "   3        2          1           4"),
                ":15: modes: found 2");
        refused("a.sm", SM.replace("    2    2\n", "    2\n"), ":28: capacities: found 1 numbers, expected 2");
        refused(
                "a.sm",
                SM.substring(0, SM.indexOf("REQUESTS")),
                "found the end of the file, expected a line that begins with \"REQUESTS/DURATIONS\"");
        refused("a.sch", SCH.replace("[-4]", "[-4"), ":4: successors: found \"[-4\"");
        refused(
                "a.sch",
                SCH.replace("1\t1\t3\t1\n", "2\t1\t3\t1\n"),
                ":7: durations: found activity 2, expected activity 1");
        refused(
                "a.sch",
                SCH.replace("[2]\t[3]", "[2]"),
                ":3: successors: found 3 numbers, expected 2 successors and as many lags");
        refused("a.sch", SCH.replace("2\t1\t0\t0\n0", "2\t1\t1\t0\n0"), ":1: other resources: found 1");
        refused("a.sch", "", ":1: line: found the end of the file");
    }

    private void refused(String name, String text, String words) throws IOException {
        Path file = write("own/" + name, text);
        assertThatExceptionOfType(UnreadableNetException.class)
                .isThrownBy(() -> NetSets.read(file))
                .withMessageContaining(file.toString())
                .withMessageContaining(words);
    }

    @Test
    void should_say_where_the_table_is_wrong() throws Exception {
        write("one/a.sm", SM);
        refusedTable("set,instance\n", "best_known.csv:1: columns: found set,instance");
        refusedTable(TABLE + "one,b,3,5,own\n", "best_known.csv:2: instance: found no file one/b.sm or one/b.sch");
        refusedTable(TABLE + "one,a,3,x,own\n", "best_known.csv:2: upper_bound: found \"x\"");
        refusedTable(TABLE + "one,a,6,5,own\n", "best_known.csv:2: lower_bound: found 6, expected at most 5");
        refusedTable(TABLE + "one,a,infeasible,5,own\n", "lower_bound: found \"infeasible\"");
        refusedTable(TABLE + "one,a\n", "best_known.csv:2: cells: found 2 cells");
        refusedTable(TABLE + "one,a,3,5,own\none,a,3,5,own\n", "best_known.csv:3: instance: found one/a again");
        refusedTable(TABLE + "..,a,3,5,own\n", "found no file ../a.sm");
    }

    private void refusedTable(String text, String words) throws IOException {
        write("best_known.csv", text);
        assertThatExceptionOfType(UnreadableNetException.class)
                .isThrownBy(() -> NetSets.list(folder))
                .withMessageContaining(words);
    }
}
