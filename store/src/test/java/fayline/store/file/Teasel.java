package fayline.store.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Objects;

/** The small correct project of the tests. */
public final class Teasel {
    private Teasel() {}

    /** Its folder. */
    public static DefinitionFolder folder() {
        try {
            return DefinitionFolder.from(Path.of(Objects.requireNonNull(Teasel.class.getResource("/definition/teasel"))
                    .toURI()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Its folder with a text replaced in one file. */
    public static DefinitionFolder changed(String path, String from, String to) {
        String text = folder().text(path).orElseThrow();
        if (!text.contains(from)) {
            throw new IllegalArgumentException(path + " does not hold " + from);
        }
        return folder().with(path, text.replace(from, to));
    }
}
