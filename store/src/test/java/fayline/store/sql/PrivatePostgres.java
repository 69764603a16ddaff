package fayline.store.sql;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A PostgreSQL server of a test's own in a temporary folder, on the loopback only, gone after the test. */
final class PrivatePostgres implements AutoCloseable {
    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");
    private static final String UNPRIVILEGED = "postgres";

    private final Path programs;
    private final Path folder;
    private final int port;
    private final String password;

    private PrivatePostgres(Path programs, Path folder, int port, String password) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
        this.password = password;
    }

    /** Where the newest installed server's programs lie, if it can be run: as root, an ordinary user must be there too. */
    static Optional<Path> programs() throws IOException {
        if (!Files.isDirectory(INSTALLED)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(INSTALLED)) {
            return versions.map(v -> v.resolve("bin"))
                    .filter(b -> Files.isExecutable(b.resolve("initdb")))
                    .filter(b -> !isRoot() || ordinaryUser(b).isPresent())
                    .max(Comparator.naturalOrder());
        }
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static Optional<UserPrincipal> ordinaryUser(Path any) {
        try {
            return Optional.of(
                    any.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(UNPRIVILEGED));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    static PrivatePostgres start(Path programs) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("fayline-postgres");
        String password = UUID.randomUUID().toString();
        Path passwordFile = Files.writeString(folder.resolve("password"), password, StandardCharsets.UTF_8);
        if (isRoot()) {
            UserPrincipal user = ordinaryUser(folder).orElseThrow();
            Files.setOwner(folder, user);
            Files.setOwner(passwordFile, user);
        }
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        PrivatePostgres server = new PrivatePostgres(programs, folder, port, password);
        server.run(
                "initdb",
                "-D",
                server.cluster(),
                "-U",
                "fayline",
                "-k",
                "-E",
                "UTF8",
                "--locale=C",
                "--no-sync",
                "--auth=scram-sha-256",
                "--pwfile=" + passwordFile);
        server.run(
                "pg_ctl",
                "-D",
                server.cluster(),
                "-w",
                "-t",
                "60",
                "-l",
                folder.resolve("log").toString(),
                "-o",
                "-p " + port + " -h 127.0.0.1 -k ''",
                "start");
        return server;
    }

    String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
    }

    String password() {
        return password;
    }

    private String cluster() {
        return folder.resolve("cluster").toString();
    }

    private void run(String program, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("setpriv", "--reuid=" + UNPRIVILEGED, "--regid=" + UNPRIVILEGED, "--clear-groups"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile("fayline-postgres", ".out");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        if (!process.waitFor(120, TimeUnit.SECONDS) || process.exitValue() != 0) {
            process.destroyForcibly();
            throw new IOException(program + " failed: " + Files.readString(out, StandardCharsets.UTF_8));
        }
        Files.delete(out);
    }

    @Override
    public void close() throws IOException {
        try {
            run("pg_ctl", "-D", cluster(), "-m", "immediate", "-w", "stop");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(p -> {
                try {
                    Files.delete(p);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
