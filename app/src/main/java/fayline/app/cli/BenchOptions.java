package fayline.app.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a bench is asked.
 *
 * @param topic the bench
 * @param folder the folder it works on, where it needs one
 * @param only names of files or folders to keep to; empty means all
 * @param seconds how long it may take
 * @param phones how many phones, where it is about phones
 * @param json whether it writes JSON lines
 */
public record BenchOptions(
        String topic, Optional<Path> folder, List<String> only, int seconds, int phones, boolean json) {
    /** Copies the list. */
    public BenchOptions {
        only = List.copyOf(only);
    }
}
