package fayline.app.usecase.folder;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.FolderFiles;
import fayline.store.file.HistoryPhoto;
import fayline.store.file.HistoryReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Writes a project out as a definition folder: every file byte for byte as it stands now, and what has happened beyond its
 * history files as {@code history/record.yaml}, photos of notes in {@code history/photos}. Read in elsewhere it gives the same files, steps, notes and readings. Earlier
 * texts of files and published plans stay in the record and are not written.
 */
public final class ExportFolder {
    private final ShopRecord shop;

    /** From a shop's record. */
    public ExportFolder(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * The files of a project.
     *
     * @throws fayline.app.usecase.shop.UnreadableDefinitionException if there is no such project
     */
    public DefinitionFolder files(String project) {
        return shop.deciding(() -> {
            Definition definition = shop.readDefinition(project);
            DefinitionFolder folder = shop.folder(project);
            Set<String> told = new HashSet<>(
                    EventIds.of(project, HistoryReader.read(folder, definition).events()));
            List<Entry> entries = shop.entries(1);
            Map<Long, String> clients = new HashMap<>();
            entries.forEach(e -> clients.put(e.seq(), e.client()));
            HistoryText text = new HistoryText(definition.shop().zone(), clients);
            String nothing = text.text();
            entries.stream()
                    .filter(e -> e.project().isEmpty() || e.project().equals(project))
                    .filter(e -> !told.contains(e.client()))
                    .forEach(text::add);
            return text.text().equals(nothing) ? folder : folder.with(ImportFolder.RECORD, text.text());
        });
    }

    /**
     * Writes a project out.
     *
     * @param project the project
     * @param folder a new or empty folder
     * @return how many files were written
     * @throws IOException if it cannot be written, or holds something
     */
    public int to(String project, Path folder) throws IOException {
        if (Files.exists(folder)) {
            if (!Files.isDirectory(folder)) {
                throw new NotDirectoryException(folder + ": expected a new or empty folder");
            }
            try (Stream<Path> there = Files.list(folder)) {
                if (there.findAny().isPresent()) {
                    throw new IOException(
                            folder + " is not empty: expected a new or empty folder, so that nothing is mixed");
                }
            }
        }
        DefinitionFolder files = files(project);
        SortedSet<String> photos = photos(project);
        for (String hash : photos) {
            if (shop.files().get(hash).isEmpty()) {
                throw new IOException("the file " + hash + " of a photo is missing or not as it was kept: verify-record"
                        + " names its entry. Nothing was written");
            }
        }
        files.writeTo(folder);
        FolderFiles out = new FolderFiles(folder.resolve(HistoryPhoto.FOLDER));
        photos.forEach(hash -> shop.files().get(hash).ifPresent(out::put));
        return files.paths().size() + photos.size();
    }

    /** The files of all photos that the project's notes name, those taken back included, for their entries still do. */
    private SortedSet<String> photos(String project) {
        SortedSet<String> photos = new TreeSet<>();
        shop.entries(1).stream()
                .filter(e -> e.project().equals(project) && e.kind().equals(EntryKind.STEP_NOTED.key()))
                .forEach(e -> photos.addAll(e.filesBeside()));
        return photos;
    }
}
