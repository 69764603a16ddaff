package fayline.app.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The program as a user starts it, on a free port with data of its own, until it is stopped as a user stops it. */
final class RunningProgram implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("https?://[^\\s]+");
    private static final int STOP_S = 20;
    private final Process process;
    private final BufferedReader lines;
    private final String address;

    private RunningProgram(Process process, BufferedReader lines, String address) {
        this.process = process;
        this.lines = lines;
        this.address = address;
    }

    /** The launcher beside which the program was built. */
    static Path launcher() {
        return Path.of(System.getProperty("fayline.home", ".")).resolve("fayline");
    }

    /**
     * Starts it and waits until it says where it is.
     *
     * @param data the folder above its data
     * @param further further arguments
     * @throws IOException if it ends without an address
     */
    static RunningProgram start(Path data, String... further) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(launcher().toString(), "serve", "--data", data(data).toString(), "--port", "0"));
        command.addAll(List.of(further));
        Process p = new ProcessBuilder(command)
                .redirectError(data.resolve("start.log").toFile())
                .start();
        BufferedReader lines = new BufferedReader(new InputStreamReader(p.getInputStream(), StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            Matcher m = ADDRESS.matcher(line);
            if (m.find()) {
                return new RunningProgram(p, lines, m.group());
            }
        }
        p.destroyForcibly();
        throw new IOException("the program ended without an address: "
                + Files.readString(data.resolve("start.log"), StandardCharsets.UTF_8)
                        .strip());
    }

    /** Its data. */
    static Path data(Path folder) {
        return folder.resolve("shop");
    }

    /** Its address, with a last slash. */
    String address() {
        return address;
    }

    /** Memory in kB that the system holds for it, by a name of Linux: {@code VmRSS} now, {@code VmHWM} at most. */
    OptionalLong kilobytes(String name) throws IOException {
        Path status = Path.of("/proc/" + process.pid() + "/status");
        if (!Files.isReadable(status)) {
            return OptionalLong.empty();
        }
        return Files.readAllLines(status, StandardCharsets.UTF_8).stream()
                .filter(l -> l.startsWith(name + ":"))
                .mapToLong(l -> Long.parseLong(l.replaceAll("[^0-9]", "")))
                .findFirst();
    }

    /** Processor seconds that it has used so far. */
    double processorSeconds() {
        return process.info().totalCpuDuration().map(d -> d.toMillis() / 1000.0).orElse(0.0);
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        try {
            if (!process.waitFor(STOP_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
        lines.close();
    }

    /** Takes a folder away with all in it. */
    static void delete(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path p : walk.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(p);
            }
        }
    }
}
