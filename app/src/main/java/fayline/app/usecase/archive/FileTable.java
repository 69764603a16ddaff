package fayline.app.usecase.archive;

import fayline.flow.record.Entry;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import fayline.store.file.table.CsvText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the files beside the record are and which entry they belong to, as a table. */
final class FileTable {
    private FileTable() {}

    static String of(List<Entry> entries) {
        List<List<String>> rows = new ArrayList<>();
        for (Entry e : entries) {
            List<Photo> photos = Photo.allOf(e.fields());
            for (String hash : e.filesBeside()) {
                Optional<Photo> photo =
                        photos.stream().filter(p -> p.sha256().equals(hash)).findFirst();
                rows.add(List.of(
                        hash,
                        photo.map(p -> p.sort().mediaType()).orElse(""),
                        photo.map(p -> p.people().words()).orElse(""),
                        String.valueOf(e.seq()),
                        e.kind(),
                        e.fields().text("at"),
                        e.by(),
                        about(e.fields())));
            }
        }
        return CsvText.of(List.of("file", "sort", "people in it", "entry", "kind", "at", "by", "about"), rows);
    }

    private static String about(Value.Fields f) {
        return f.text("step").isEmpty() ? f.text("of") : f.text("step");
    }
}
