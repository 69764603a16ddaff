package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code bench plan} on a folder of nets of our own, in the layout of the public sets. */
class NetBenchTest {
    /** Two of 3 and 4 on the one stand, then one of 2 after the first: 3 + 4 = 7, and 3 + 2 lies within. */
    private static final String SECTIONED = """
            jobs (incl. supersource/sink ):  5
              - renewable                 :  1   R
              - nonrenewable              :  0   N
              - doubly constrained        :  0   D
            PRECEDENCE RELATIONS:
            jobnr.    #modes  #successors   successors
               1        1          2           2   3
               2        1          1           4
               3        1          1           5
               4        1          1           5
               5        1          0
            REQUESTS/DURATIONS:
            jobnr. mode duration  R 1
            --------------------------
              1      1     0       0
              2      1     3       1
              3      1     4       1
              4      1     2       0
              5      1     0       0
            RESOURCEAVAILABILITIES:
              R 1
                1
            """;

    /** Two of 2 on the one stand, the second to start within so much after the first. */
    private static final String LAGGED = """
            2\t1\t0\t0
            0\t1\t1\t1\t[0]
            1\t1\t2\t2\t3\t[0]\t[2]
            2\t1\t2\t1\t3\t[-WITHIN]\t[2]
            3\t1\t0
            0\t1\t0\t0
            1\t1\t2\t1
            2\t1\t2\t1
            3\t1\t0\t0
            1
            """;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void write() throws IOException {
        known("plain,a,7,7,own\nlagged,near,infeasible,infeasible,own\nlagged,far,4,4,own\n");
        Files.createDirectories(folder.resolve("plain"));
        Files.createDirectories(folder.resolve("lagged"));
        Files.writeString(folder.resolve("plain/a.sm"), SECTIONED);
        Files.writeString(folder.resolve("lagged/near.sch"), LAGGED.replace("WITHIN", "1"));
        Files.writeString(folder.resolve("lagged/far.sch"), LAGGED.replace("WITHIN", "2"));
    }

    private void known(String rows) throws IOException {
        Files.writeString(folder.resolve("best_known.csv"), "set,instance,lower_bound,upper_bound,source\n" + rows);
    }

    private int bench(boolean json) {
        out.reset();
        err.reset();
        return new BenchRun(print(out), print(err)).run("plan", Optional.of(folder), List.of(), 1, 1, json);
    }

    private static PrintStream print(ByteArrayOutputStream to) {
        return new PrintStream(to, true, StandardCharsets.UTF_8);
    }

    private String said(ByteArrayOutputStream by) {
        return by.toString(StandardCharsets.UTF_8);
    }

    @Test
    void should_write_a_line_for_each_net_when_json_is_asked() throws Exception {
        assertThat(bench(true)).isEqualTo(BenchRun.DONE);
        List<JsonNode> lines = new ArrayList<>();
        for (String line : said(out).lines().toList()) {
            lines.add(new ObjectMapper().readTree(line));
        }
        assertThat(lines).hasSize(3);
        for (JsonNode line : lines) {
            assertThat(line.fieldNames())
                    .toIterable()
                    .containsExactly("set", "instance", "makespan", "bound", "proven", "infeasible", "seconds");
            assertThat(line.path("proven").booleanValue()).isTrue();
            assertThat(line.path("seconds").isNumber()).isTrue();
        }
        assertThat(lines.get(0).path("makespan").intValue()).isEqualTo(7);
        assertThat(lines.get(1).path("makespan").isNull()).isTrue();
        assertThat(lines.get(1).path("infeasible").booleanValue()).isTrue();
        assertThat(lines.get(2).path("instance").textValue()).isEqualTo("far");
        assertThat(lines.get(2).path("makespan").intValue()).isEqualTo(4);
        assertThat(lines.get(2).path("bound").intValue()).isEqualTo(4);
    }

    @Test
    void should_write_a_row_for_each_set_when_read_by_people() {
        assertThat(bench(false)).isEqualTo(BenchRun.DONE);
        List<String> rows = said(out).lines().toList();
        assertThat(rows).hasSize(3);
        assertThat(rows.get(0)).contains("proven", "mean gap", "worst gap");
        assertThat(rows.get(1)).startsWith("plain").contains("0.00 %");
        assertThat(rows.get(2)).startsWith("lagged");
    }

    @Test
    void should_differ_when_what_is_known_cannot_be_true_beside_what_was_found() throws Exception {
        known("plain,a,8,8,own\nlagged,near,3,3,own\nlagged,far,infeasible,infeasible,own\n");
        assertThat(bench(true)).isEqualTo(BenchRun.DIFFERS);
        assertThat(said(err))
                .contains("plain/a: found a schedule of 7, below the known bound 8")
                .contains("lagged/near: found infeasible, known: a schedule of 3")
                .contains("lagged/far: found a schedule of 4, known as infeasible");
        known("plain,a,5,6,own\n");
        assertThat(bench(true)).isEqualTo(BenchRun.DIFFERS);
        assertThat(said(err)).contains("plain/a: found the bound 7, above the known schedule of 6");
    }

    @Test
    void should_name_file_and_line_and_schedule_nothing_when_a_net_is_broken() throws Exception {
        Files.writeString(folder.resolve("lagged/far.sch"), LAGGED.replace("WITHIN", "x"));
        assertThat(bench(true)).isEqualTo(BenchRun.BAD_INPUT);
        assertThat(said(err)).contains("far.sch:4: successors: found \"[-x]\"");
        assertThat(said(out)).isEmpty();
    }
}
