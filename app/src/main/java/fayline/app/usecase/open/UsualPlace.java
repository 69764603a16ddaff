package fayline.app.usecase.open;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where a shop's data lies when nobody says where. */
public final class UsualPlace {
    private UsualPlace() {}

    /**
     * The user's data folder for this program, as the system keeps such things: {@code XDG_DATA_HOME} or
     * {@code ~/.local/share} on Linux, {@code ~/Library/Application Support} on a Mac, {@code %APPDATA%} on Windows.
     *
     * @param system the system's name, as Java gives it
     * @param home the user's home folder
     * @param environment the environment
     */
    public static Path data(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        Path base;
        if (name.startsWith("windows")) {
            base = Path.of(environment.getOrDefault("APPDATA", home));
        } else if (name.startsWith("mac")) {
            base = Path.of(home, "Library", "Application Support");
        } else {
            String set = environment.getOrDefault("XDG_DATA_HOME", "");
            base = set.isBlank() ? Path.of(home, ".local", "share") : Path.of(set);
        }
        return base.resolve("fayline").resolve("shop");
    }

    /** Where native libraries are unpacked for whoever runs this program. */
    public static Path libraries() {
        return libraries(System.getProperty("os.name", ""), System.getProperty("user.home", "."), System.getenv());
    }

    /** Where native libraries are unpacked for a user: beside {@link #data}. */
    public static Path libraries(String system, String home, Map<String, String> environment) {
        return data(system, home, environment).resolveSibling("libraries");
    }
}
