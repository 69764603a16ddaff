package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** The second program, which checks records by the page of their form alone. */
final class SecondProgram {
    private SecondProgram() {}

    static Map<Path, Long> opinions(List<Path> places, Optional<String> head) throws Exception {
        Map<Path, Long> found = new LinkedHashMap<>();
        List<String> lines = run(places, head).lines().toList();
        for (int i = 0; i < places.size(); i++) {
            String told = lines.get(i).substring(places.get(i).toString().length() + 2);
            found.put(
                    places.get(i),
                    told.endsWith("all sound")
                            ? 0L
                            : told.startsWith("entry ") ? Long.parseLong(told.substring(6, told.indexOf(':'))) : -1L);
        }
        return found;
    }

    static String run(List<Path> places, Optional<String> head) throws Exception {
        List<String> command = new ArrayList<>(List.of("python3", script().toString()));
        head.ifPresent(h -> command.addAll(List.of("--head", h)));
        places.forEach(p -> command.add(p.toString()));
        Process process;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException e) {
            assumeTrue(false, "no python3 here for the second program");
            throw e;
        }
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return out;
    }

    private static Path script() {
        Path here = Path.of("").toAbsolutePath();
        return here.resolve(Files.exists(here.resolve("docs")) ? "." : "..")
                .resolve("docs/record-format/verify.py")
                .normalize();
    }
}
