package fayline.app.cli;

import fayline.app.bench.BenchRun;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** Runs commands as a shell would and keeps what they print. */
final class Shell {
    static final Instant NOW = Instant.parse("2026-03-02T07:00:00Z");

    String out = "";
    String err = "";

    int run(String stdin, String... args) {
        ByteArrayOutputStream o = new ByteArrayOutputStream();
        ByteArrayOutputStream e = new ByteArrayOutputStream();
        PrintStream outStream = new PrintStream(o, true, StandardCharsets.UTF_8);
        PrintStream errStream = new PrintStream(e, true, StandardCharsets.UTF_8);
        Surroundings s = new Surroundings(
                new ByteArrayInputStream(stdin.getBytes(StandardCharsets.UTF_8)),
                outStream,
                errStream,
                Clock.fixed(NOW, ZoneOffset.UTC),
                (b, x, y) -> new BenchRun(x, y).run(b.topic(), b.folder(), b.only(), b.seconds(), b.phones(), b.json()),
                (options, surroundings) -> 0);
        int code = Program.run(args, s);
        outStream.flush();
        errStream.flush();
        out = o.toString(StandardCharsets.UTF_8);
        err = e.toString(StandardCharsets.UTF_8);
        return code;
    }
}
