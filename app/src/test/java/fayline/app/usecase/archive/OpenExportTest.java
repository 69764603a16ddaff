package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.shop.Sent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop handed over: read with nothing but ZIP, JSON and CSV, and read in again without loss. */
class OpenExportTest {
    private static final Path DEMO = Path.of("../demo/ousel");
    private static final Path PHOTO = Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg");

    @TempDir
    Path temp;

    private Path data = Path.of("");
    private Path file = Path.of("");

    @BeforeEach
    void hand() throws Exception {
        data = temp.resolve("data");
        file = temp.resolve("open.zip");
        Clock clock = Clock.fixed(Instants.NOW, ZoneOffset.UTC);
        try (OpenShop open = OpenShop.openWith(data, DEMO, clock, Optional.empty())) {
            var noted = new NoteStep(open.shop())
                    .note(
                            Sent.once("bram"),
                            "ousel-1/hull-bottom/1/trim",
                            "The chine.",
                            List.of(SentPicture.of(Files.readAllBytes(PHOTO), false, false)),
                            Optional.empty());
            assertThat(noted.stands()).as(noted.sentence()).isTrue();
        }
        BackUpRecord.write(data, file, false, Instants.NOW, "test");
    }

    private static Map<String, byte[]> unpacked(Path zip) throws IOException {
        Map<String, byte[]> all = new TreeMap<>();
        try (ZipFile z = new ZipFile(zip.toFile())) {
            for (ZipEntry e : z.stream().toList()) {
                all.put(e.getName(), z.getInputStream(e).readAllBytes());
            }
        }
        return all;
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
    }

    @Test
    void should_be_read_without_the_program() throws Exception {
        Map<String, byte[]> files = unpacked(file);
        JsonNode manifest = new ObjectMapper().readTree(files.get("manifest.json"));
        int named = 0;
        for (JsonNode f : manifest.get("files")) {
            byte[] there = files.getOrDefault(f.get("path").asText(), new byte[0]);
            assertThat(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(there)))
                    .as(f.get("path").asText())
                    .isEqualTo(f.get("sha256").asText());
            named++;
        }
        assertThat(named).isEqualTo(files.size() - 1);
        assertThat(text(files, "entries.jsonl").lines().count())
                .isEqualTo(manifest.get("entries").asLong());
        try (Stream<Path> walk = Files.walk(DEMO)) {
            for (Path p : walk.filter(Files::isRegularFile)
                    .filter(p -> !p.toString().contains("history"))
                    .toList()) {
                assertThat(files.get("definition/ousel-1/"
                                + DEMO.relativize(p).toString().replace('\\', '/')))
                        .as(p.toString())
                        .isEqualTo(Files.readAllBytes(p));
            }
        }
        String photo = text(files, "tables/files.csv")
                .lines()
                .filter(l -> l.contains("image/jpeg") && l.contains("hull-bottom/1/trim"))
                .findFirst()
                .orElseThrow()
                .split(",")[0];
        assertThat(files).containsKey("files/" + photo).doesNotContainKey("people.json");
        assertThat(text(files, "README.txt")).contains("files.csv", "definition/");
    }

    @Test
    void should_give_the_same_record_byte_for_byte_when_read_in_again() throws Exception {
        Path other = temp.resolve("other");
        RestoreRecord.into(file, other);
        Path again = temp.resolve("again.zip");
        BackUpRecord.write(other, again, false, Instants.NOW, "test");

        assertThat(again).hasSameBinaryContentAs(file);
        assertThat(SecondProgram.opinions(List.of(data, file, other), Optional.empty()))
                .isEqualTo(Map.of(data, 0L, file, 0L, other, 0L));
    }
}
