package fayline.app.cli;

import fayline.app.usecase.archive.ReadPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** What must be so of a folder before a command begins. */
final class NeededFolder {
    private NeededFolder() {}

    static void isThere(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new BadInputException("found no folder " + folder + ", expected one that is there");
        }
    }

    /** A place to read a record from: an archive, or a data folder with a record in it. */
    static void holdsRecord(Path place) {
        if (Files.isRegularFile(place)) {
            return;
        }
        isThere(place);
        if (!ReadPlace.holdsRecord(place)) {
            throw new BadInputException("found no record in " + place
                    + ", expected a data folder, in which shop.db or database.properties lies, or an archive");
        }
    }

    static void isNewOrEmpty(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw new BadInputException("found a file " + folder + ", expected a new or empty folder");
        }
        try (Stream<Path> there = Files.list(folder)) {
            if (there.findAny().isPresent()) {
                throw new BadInputException(
                        folder + " is not empty, expected a new or empty folder, so that nothing is mixed");
            }
        }
    }
}
