package fayline.app.usecase.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;

/**
 * A file as it was read, without knowing what it means.
 *
 * @param path its path below the folder, with strokes
 * @param table its lines, the header first, if it is a comma-separated file
 * @param json its content, if it is a JSON file
 * @param unreadable why it could not be read; empty if it could
 */
public record RawFile(
        String path, Optional<List<List<String>>> table, Optional<JsonNode> json, Optional<String> unreadable) {
    /** The file's name without ending. */
    public String name() {
        String last = path.substring(path.lastIndexOf('/') + 1);
        return last.contains(".") ? last.substring(0, last.lastIndexOf('.')) : last;
    }

    /** Whether the file is of a name, or lies in a folder of that name. */
    public boolean isNamed(String name) {
        if (name().equals(name)) {
            return true;
        }
        List<String> steps = List.of(path.split("/"));
        return steps.subList(0, steps.size() - 1).contains(name);
    }
}
