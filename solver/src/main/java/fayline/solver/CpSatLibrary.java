package fayline.solver;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.net.URLConnection;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Enumeration;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * The native library of CP-SAT, unpacked once into a folder and loaded from there. See {@code
 * docs/decisions/0010-or-tools-native.md}.
 */
public final class CpSatLibrary {
    private static final String VERSION = "9.14.6206";
    private static final String WHOLE = "whole";

    /**
     * Whether this process has loaded a copy. A second copy from another folder must not follow: Java would bind some calls to
     * one and some to the other, and their callbacks bring the virtual machine down (seen).
     */
    private static final AtomicBoolean LOADED = new AtomicBoolean();

    private final Path folder;

    /**
     * Names the folder; nothing is written yet.
     *
     * @param folder where the library is or will be unpacked, each version and platform in a folder of its own (some 66 MB)
     */
    public CpSatLibrary(Path folder) {
        this.folder = folder;
    }

    /**
     * Loads the library, unpacking it first where it is not. Doing so again does nothing, whatever the folder.
     *
     * @throws UncheckedIOException if it cannot be unpacked: another platform, or a folder that cannot be written
     * @throws UnsatisfiedLinkError if it cannot be loaded
     */
    public void load() {
        String platform = platform(System.getProperty("os.name", ""), System.getProperty("os.arch", ""));
        Path home = folder.resolve(platform + "-" + VERSION);
        synchronized (LOADED) {
            try {
                if (!Files.exists(home.resolve(WHOLE))) {
                    unpackOnce(platform, home);
                }
            } catch (IOException e) {
                throw new UncheckedIOException("the native library of CP-SAT could not be unpacked", e);
            }
            if (!LOADED.get()) {
                System.load(home.resolve(fileName(platform)).toAbsolutePath().toString());
                LOADED.set(true);
            }
        }
    }

    /** The artifact's name for a machine. */
    static String platform(String osName, String osArch) {
        String os = osName.toLowerCase(Locale.ROOT);
        String arch = osArch.toLowerCase(Locale.ROOT);
        String system = os.startsWith("win") ? "win32" : os.startsWith("mac") ? "darwin" : "linux";
        String processor = arch.equals("aarch64") || arch.equals("arm64") ? "aarch64" : "x86-64";
        return "ortools-" + system + "-" + processor;
    }

    private static String fileName(String platform) {
        if (platform.contains("win32")) {
            return "jniortools.dll";
        }
        return platform.contains("darwin") ? "libjniortools.dylib" : "libjniortools.so";
    }

    /** Unpacks while no other process does; one that was waited for has done it. */
    private void unpackOnce(String platform, Path home) throws IOException {
        Files.createDirectories(folder);
        try (FileChannel gate = FileChannel.open(
                        folder.resolve("unpacking"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = gate.lock()) {
            if (held.isValid() && !Files.exists(home.resolve(WHOLE))) {
                unpack(platform, home);
            }
        }
    }

    /** Unpacks into a folder beside and renames it, so that a half-unpacked one is never taken for whole. */
    private void unpack(String platform, Path home) throws IOException {
        URL library = CpSatLibrary.class.getResource("/" + platform + "/" + fileName(platform));
        if (library == null) {
            throw new IOException("no " + platform + " among the libraries of this installation");
        }
        Path part = Files.createTempDirectory(folder, "part");
        try {
            copyAll(library, platform, part);
            Files.createFile(part.resolve(WHOLE));
            remove(home);
            Files.move(part, home, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            remove(part);
        }
    }

    private static void copyAll(URL library, String platform, Path to) throws IOException {
        URLConnection connection = library.openConnection();
        if (!(connection instanceof JarURLConnection inJar)) {
            throw new IOException("expected the library in a jar, found it elsewhere");
        }
        connection.setUseCaches(false);
        try (JarFile jar = inJar.getJarFile()) {
            Enumeration<JarEntry> entries = jar.entries();
            while (entries.hasMoreElements()) {
                JarEntry entry = entries.nextElement();
                if (entry.getName().startsWith(platform + "/") && !entry.isDirectory()) {
                    Path file = to.resolve(entry.getName().substring(platform.length() + 1))
                            .normalize();
                    if (!file.startsWith(to)) {
                        throw new IOException("the jar names a file outside its folder");
                    }
                    try (InputStream in = jar.getInputStream(entry)) {
                        Files.createDirectories(to.resolve(file).getParent());
                        Files.copy(in, file);
                    }
                }
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
