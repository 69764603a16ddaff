package fayline.app.usecase.cases;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.store.file.table.CsvTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads every CSV and JSON file below a folder. */
public final class ReadCaseFiles {
    private static final long LARGEST_BYTES = 64L << 20;

    private ReadCaseFiles() {}

    /**
     * Reads the files, in the order of their paths.
     *
     * @param folder the folder, or one file
     * @throws CalcInputException if there is no such folder
     */
    public static List<RawFile> below(Path folder) {
        if (!Files.exists(folder)) {
            throw CalcInputException.of("FOLDER", folder + ", which is not there", "a folder with case files");
        }
        String folderName = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        try (Stream<Path> walk = Files.walk(folder)) {
            List<RawFile> files = new ArrayList<>();
            for (Path p : walk.filter(Files::isRegularFile).sorted().toList()) {
                // The folder's own name counts too: one may point at a single folder of a set, or at a single file.
                Path shown = p.equals(folder)
                        ? Path.of(folderName)
                        : Path.of(folderName).resolve(folder.relativize(p));
                read(p, shown.toString().replace('\\', '/')).ifPresent(files::add);
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot list " + folder, e);
        }
    }

    private static Optional<RawFile> read(Path file, String shown) {
        String name = shown.toLowerCase(Locale.ROOT);
        if (!name.endsWith(".csv") && !name.endsWith(".json")) {
            return Optional.empty();
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                return Optional.of(unreadable(shown, "larger than 64 MiB"));
            }
            if (name.endsWith(".json")) {
                return Optional.of(new RawFile(
                        shown,
                        Optional.empty(),
                        Optional.of(Json.read(Files.readString(file, StandardCharsets.UTF_8))),
                        Optional.empty()));
            }
            CsvTable t = CsvTable.read(file);
            List<List<String>> lines = new ArrayList<>();
            lines.add(t.header());
            t.rows().forEach(r -> lines.add(r.cells()));
            return Optional.of(new RawFile(shown, Optional.of(lines), Optional.empty(), Optional.empty()));
        } catch (IOException | CalcInputException e) {
            return Optional.of(unreadable(shown, String.valueOf(e.getMessage())));
        }
    }

    private static RawFile unreadable(String shown, String why) {
        return new RawFile(shown, Optional.empty(), Optional.empty(), Optional.of(why));
    }
}
