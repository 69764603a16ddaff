package fayline.app.pdf.book;

import fayline.app.pdf.Markup;
import fayline.flow.record.payload.Photo;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The pictures of a book: each made ready once, and told of where it cannot be. */
final class ChapterPhotos {
    private final Function<String, Optional<byte[]>> source;
    private final Map<String, byte[]> ready = new HashMap<>();

    ChapterPhotos(Function<String, Optional<byte[]>> source) {
        this.source = source;
    }

    /** A picture that was written before. */
    Optional<byte[]> again(String name) {
        return Optional.ofNullable(ready.get(name));
    }

    /** Writes a picture with its line. */
    void write(Markup m, Photo photo, String line) {
        m.open("div", "photo");
        boolean there = ready.containsKey(photo.sha256());
        if (!there) {
            Optional<byte[]> made = source.apply(photo.sha256());
            made.ifPresent(bytes -> ready.put(photo.sha256(), bytes));
            there = made.isPresent();
        }
        if (there) {
            m.empty("img", "src", "picture:" + photo.sha256(), "alt", line);
        } else {
            m.element("p", "strong", "The picture cannot be read.");
        }
        m.element("div", "small", line);
        m.element(
                "div",
                "small",
                "File " + photo.sha256().substring(0, 12) + ", "
                        + photo.people().words() + (photo.original() ? ", as it was taken" : ", made smaller"));
        m.close();
    }
}
