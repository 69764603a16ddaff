package fayline.walks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The real program in a process of its own, which can be killed and comes back at the same address. */
final class RunningShop {
    private static final String CODE = "[0-9A-Z]{4}(-[0-9A-Z]{4}){2}";
    private final Path data;
    private final List<String> asked;
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private @Nullable Process server;
    private String address = "";
    private String code = "";

    private RunningShop(Path data, List<String> asked) {
        this.data = data;
        this.asked = List.copyOf(asked);
    }

    /**
     * Starts the program on a free port.
     *
     * @param data its data folder
     * @param asked further options of {@code serve}
     */
    static RunningShop in(Path data, List<String> asked) throws IOException {
        RunningShop shop = new RunningShop(data, asked);
        shop.start();
        return shop;
    }

    private static List<String> program() {
        return new ArrayList<>(List.of(
                JAVA,
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dfayline.home=" + root(),
                "-cp",
                System.getProperty("java.class.path"),
                "fayline.app.Main"));
    }

    /** Runs the command line to its end; the exit code in a line of its own, then all it said. */
    static String command(String... words) throws IOException, InterruptedException {
        List<String> command = program();
        command.addAll(List.of(words));
        Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return p.waitFor() + "\n" + said;
    }

    /** Starts the server and waits until it says where it is. */
    void start() throws IOException {
        // a server that comes back is at the address that phones know
        String port = address.isEmpty() ? "0" : address.substring(address.lastIndexOf(':') + 1);
        address = "";
        List<String> command = program();
        command.addAll(List.of("serve", "--no-browser", "--port", port, "--data", data.toString()));
        command.addAll(asked);
        Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
        server = p;
        List<String> said = new ArrayList<>();
        BufferedReader out = new BufferedReader(new InputStreamReader(p.getInputStream(), StandardCharsets.UTF_8));
        String line;
        while ((line = out.readLine()) != null) {
            said.add(line);
            int at = line.indexOf("http");
            if (at >= 0 && address.isEmpty()) {
                address = line.substring(at).strip().replaceAll("/+$", "");
                if (asked.contains("--lan")) {
                    // this machine under its own name: what others are told need not lead here
                    address = address.replaceAll("//.*:", "//localhost:");
                }
            }
            if (line.strip().matches(CODE)) {
                code = line.strip();
            }
            if (!address.isEmpty() && (!asked.contains("--lan") || !code.isEmpty())) {
                Thread drain = new Thread(() -> out.lines().forEach(l -> {}));
                drain.setDaemon(true);
                drain.start();
                return;
            }
        }
        throw new IOException("the server did not start: " + said);
    }

    /** The code that the server printed for whoever becomes the lead. */
    String code() {
        return code;
    }

    /** Kills the server as a power cut would. */
    void kill() throws InterruptedException {
        Process p = server;
        if (p != null) {
            p.destroyForcibly().waitFor();
        }
    }

    /** The checkout. */
    static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("demo")) ? here : here.resolveSibling("");
    }

    /** The address, without a slash at its end. */
    String address() {
        return address;
    }

    /** The host in the address. */
    String host() {
        return URI.create(address).getHost();
    }

    /** The port. */
    int port() {
        return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
    }

    /** The data folder. */
    Path data() {
        return data;
    }
}
