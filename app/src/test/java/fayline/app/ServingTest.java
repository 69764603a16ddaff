package fayline.app;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.cli.ExitCode;
import fayline.app.cli.LanOptions;
import fayline.app.cli.Program;
import fayline.app.cli.ServeOptions;
import fayline.app.cli.Surroundings;
import fayline.app.pdf.QrCode;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServingTest {
    @TempDir
    Path folder;

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final List<ServeOptions> served = new ArrayList<>();

    private Surroundings surroundings() {
        PrintStream all = new PrintStream(said, true, StandardCharsets.UTF_8);
        return new Surroundings(
                InputStream.nullInputStream(), all, all, Clock.systemUTC(), (o, out, err) -> 0, (o, s) -> {
                    served.add(o);
                    return 0;
                });
    }

    private String said() {
        return said.toString(StandardCharsets.UTF_8);
    }

    private int serve(String... more) {
        List<String> args = new ArrayList<>(List.of("serve", "--data", folder.toString(), "--no-browser"));
        args.addAll(List.of(more));
        return Program.run(args.toArray(String[]::new), surroundings());
    }

    @Test
    void should_serve_this_machine_alone_unless_the_network_is_asked_for() {
        assertThat(serve()).isZero();
        assertThat(served.get(0).lan()).isEmpty();
        assertThat(serve("--lan", "--set-up")).isZero();
        assertThat(served.get(1).lan()).contains(new LanOptions(Optional.empty(), true));
    }

    @Test
    void should_refuse_files_and_codes_without_the_network_and_a_certificate_without_its_key() {
        assertThat(serve("--cert", "a.crt")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("--cert: found without --lan");
        assertThat(serve("--set-up")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("--set-up: found without --lan");
        assertThat(serve("--lan", "--cert", "a.crt")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("--cert: found without --key, expected both or neither");
        assertThat(serve("--lan", "--key", "a.key")).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("--key: found without --cert");
        assertThat(served).isEmpty();
    }

    private int run(LanOptions lan, boolean demo) {
        ServeOptions options = new ServeOptions(
                folder.resolve("data"), demo, Optional.of(0), Optional.empty(), false, Optional.of(lan), false);
        return new Serving(options, surroundings()).run();
    }

    @Test
    void should_not_open_the_network_to_a_shop_without_people() {
        assertThat(run(new LanOptions(Optional.empty(), false), false)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("holds no project").contains("fayline import FOLDER");
    }

    @Test
    void should_name_the_file_when_a_certificate_cannot_be_used() throws Exception {
        System.setProperty("fayline.home", "..");
        Path certificate = Files.writeString(folder.resolve("mine.crt"), "no certificate");
        Path key = Files.writeString(folder.resolve("mine.key"), "no key");
        LanOptions lan = new LanOptions(Optional.of(new LanOptions.Supplied(certificate, key)), false);
        assertThat(run(lan, true)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said()).contains("mine.crt: found no certificate, expected a PEM file");
        assertThat(said()).doesNotContain("Fayline is at");
    }

    @Test
    void should_print_an_address_as_a_square_of_blocks() {
        String square = QrCode.asText("https://192.168.7.4:7423/");
        List<String> lines = square.lines().toList();
        assertThat(lines)
                .hasSizeGreaterThan(12)
                .allMatch(l -> l.length() == lines.get(0).length());
        assertThat(lines.get(0)).matches("\u2588+");
        assertThat(square).contains("\u2580").contains("\u2584").contains(" ");
    }
}
