package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChecksBenchTest {
    private static final String HEADER = "case_id,topic,inputs,expected,tolerance,source,basis,notes\n";

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(boolean json, String... only) {
        return new BenchRun(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8))
                .run("checks", Optional.of(folder), List.of(only), 20, 1, json);
    }

    private void put(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    private static String split(String id, String expectedResin, String tolerance) {
        return id + ",x,\"{\"\"total\"\": {\"\"v\"\": 500, \"\"u\"\": \"\"g\"\"}, \"\"parts_resin\"\": {\"\"v\"\": 100,"
                + " \"\"u\"\": \"\"pbw\"\"}, \"\"parts_hardener\"\": {\"\"v\"\": 25, \"\"u\"\": \"\"pbw\"\"}}\","
                + "\"{\"\"resin\"\": {\"\"v\"\": " + expectedResin + ", \"\"u\"\": \"\"g\"\"}}\",\"{\"\"resin\"\": {"
                + tolerance + "}}\",own,first-principles,\n";
    }

    @Test
    void should_hold_and_end_with_0_when_the_value_is_right() throws IOException {
        put("shop/mixes.csv", HEADER + split("A-1", "400", "\"\"abs\"\": 0.01"));
        assertThat(run(false)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("holds", "A-1", "1 holds, 0 differs, 0 not covered");
    }

    @Test
    void should_differ_with_both_values_and_end_with_1_when_the_value_is_wrong() throws IOException {
        put(
                "shop/mixes.csv",
                HEADER + split("A-1", "390", "\"\"abs\"\": 0.01") + split("A-2", "0.4", "\"\"rel\"\": 0.1"));
        assertThat(run(false)).isEqualTo(1);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("A-1; resin: expected 390, found 400", "0 holds, 2 differs, 0 not covered");
    }

    @Test
    void should_reckon_the_same_whatever_is_expected() throws IOException {
        for (String expected : List.of("390", "1e9", "-7", "0")) {
            out.reset();
            put("shop/mixes.csv", HEADER + split("A-1", expected, "\"\"exact\"\": true"));
            run(false);
            assertThat(out.toString(StandardCharsets.UTF_8)).contains("found 400");
        }
    }

    @Test
    void should_choose_by_quantities_when_the_file_has_a_name_of_its_own() throws IOException {
        put("anything/own.csv", HEADER + split("A-1", "400", "\"\"abs\"\": 0.01"));
        assertThat(run(false)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("1 holds");
    }

    @Test
    void should_say_not_covered_when_no_subject_answers() throws IOException {
        put(
                "shop/mixes.csv",
                HEADER
                        + split("A-1", "400", "\"\"abs\"\": 0.01")
                                .replace("resin\"\": {\"\"v", "lift\"\": {\"\"v")
                                .replace("{\"\"resin\"\": {\"\"abs", "{\"\"lift\"\": {\"\"abs"));
        assertThat(run(false)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("not covered", "lift", "0 holds, 0 differs, 1 not covered");
    }

    @Test
    void should_end_with_2_and_still_answer_the_others_when_a_file_is_unreadable() throws IOException {
        put("shop/mixes.csv", HEADER + split("A-1", "400", "\"\"abs\"\": 0.01"));
        put("shop/cure.csv", HEADER + "C-1,x,{not json,{},{},s,b,n\n");
        assertThat(run(false)).isEqualTo(2);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("1 holds");
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("cure.csv", "C-1", "inputs");
    }

    @Test
    void should_end_with_2_when_a_json_file_is_no_json_or_bytes_are_not_utf8() throws IOException {
        put("fitup/a.json", "{\"kind\": ");
        assertThat(run(false)).isEqualTo(2);
        Files.delete(folder.resolve("fitup/a.json"));
        Files.write(folder.resolve("fitup/b.csv"), new byte[] {(byte) 0xff, (byte) 0xfe, 0x41});
        assertThat(run(false)).isEqualTo(2);
    }

    @Test
    void should_tell_the_layout_by_form_and_pass_over_the_rest() throws IOException {
        put("x/one.json", "{\"id\":\"F\",\"kind\":\"gap\",\"inputs\":{},\"expected\":{},\"tolerance\":{}}");
        put(
                "x/two.json",
                "{\"format\":\"cut-check-1\",\"id\":\"N\",\"rolls\":[{\"width\":1}],\"plies\":[{\"vertices\":[[0,0],[1,0],[1,1]]}],\"expect\":{}}");
        put(
                "x/three.csv",
                "case_id,title,inputs,expected,tolerance\nM-1,t,E [GPa]=70; plies [deg]=0 90,A = E t [N]=1 2; mode [-]=tension,A rel 1e-3; mode exact\n");
        put("x/four.csv", "date,price\n2026-01-01,3\n");
        put("x/five.json", "{\"colour\":\"blue\"}");
        put("x/README.md", "words");
        assertThat(run(false)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("0 holds, 0 differs, 3 not covered");
    }

    @Test
    void should_write_json_lines_when_asked() throws IOException {
        put("shop/mixes.csv", HEADER + split("A-1", "390", "\"\"abs\"\": 0.01"));
        run(true);
        assertThat(out.toString(StandardCharsets.UTF_8).lines())
                .allMatch(l -> l.startsWith("{"))
                .anyMatch(l -> l.contains("\"outcome\":\"differs\"") && l.contains("\"expected\":\"390\""))
                .anyMatch(l -> l.contains("\"holds\":0,\"differs\":1,\"notCovered\":0"));
    }

    @Test
    void should_end_with_2_when_no_file_has_the_name_asked_for() throws IOException {
        put("shop/mixes.csv", HEADER + split("A-1", "400", "\"\"abs\"\": 0.01"));
        assertThat(run(false, "elsewhere")).isEqualTo(2);
        assertThat(run(false, "shop")).isZero();
        assertThat(run(false, "mixes", "elsewhere")).isZero();
    }

    @Test
    void should_take_tolerances_as_the_tables_say() throws IOException {
        String row =
                "T-1,x,\"{\"\"unit\"\": {\"\"v\"\": [\"\"ft\"\", \"\"in\"\"], \"\"u\"\": \"\"-\"\"}, \"\"to\"\": {\"\"v\"\": \"\"m\"\","
                        + " \"\"u\"\": \"\"-\"\"}}\",\"{\"\"factor\"\": {\"\"v\"\": [0.3048, 0.0255], \"\"u\"\": \"\"as listed\"\"}}\","
                        + "\"{\"\"factor\"\": {TOL}}\",s,b,n\n";
        put("other/units.csv", HEADER + row.replace("TOL", "\"\"rel\"\": 0.001"));
        assertThat(run(false)).as("relative to the largest of the list").isZero();
        put("other/units.csv", HEADER + row.replace("TOL", "\"\"rel_each\"\": 0.001"));
        assertThat(run(false)).as("relative to each").isEqualTo(1);
        put("other/units.csv", HEADER + row.replace("TOL", "\"\"abs\"\": 0.0001"));
        assertThat(run(false)).isZero();
        put("other/units.csv", HEADER + row.replace("TOL", "\"\"exact\"\": true"));
        assertThat(run(false)).isEqualTo(1);
        put("other/units.csv", HEADER + row.replace("TOL", "\"\"near\"\": 1"));
        assertThat(run(false)).as("an unknown tolerance").isEqualTo(2);
    }
}
