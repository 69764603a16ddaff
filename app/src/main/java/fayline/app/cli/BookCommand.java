package fayline.app.cli;

import fayline.app.pdf.Paper;
import fayline.app.pdf.book.BookPdf;
import fayline.app.usecase.archive.ReadPlace;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.MakeBook;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.Photos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code fayline book}: the book of what was built, from a data folder or an archive. */
@Command(
        name = "book",
        mixinStandardHelpOptions = true,
        description = {
            "Prints the book of what was built to a PDF/A, from a data folder, open in a program or not, or from an archive.",
            "It ends where the record ends, and says so on every page. Exit code 1 when the record is not sound; nothing is",
            "written then."
        })
final class BookCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "PLACE", description = "a data folder or an archive")
    @SuppressWarnings("NullAway.Init")
    private Path place;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "OF",
            description = "a part, joint or assembly by its id; the whole aircraft where it is not given")
    private @Nullable String of;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "the file to write")
    @SuppressWarnings("NullAway.Init")
    private Path out;

    @Option(names = "--project", paramLabel = "ID", description = "which project; needed where there are several")
    private @Nullable String project;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "PAPER", description = "a4 or letter")
    @SuppressWarnings("NullAway.Init")
    private String paper;

    BookCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        Paper sheet = Paper.of(paper)
                .orElseThrow(() -> new BadInputException("--paper: found \"" + paper + "\", expected a4 or letter"));
        NeededFolder.holdsRecord(place);
        Path beside = out.toAbsolutePath().getParent();
        if (beside == null || !Files.isDirectory(beside) || Files.isDirectory(out)) {
            throw new BadInputException("--out: found " + out + ", expected a file name in a folder that is there");
        }
        ShopRecord shop = ReadPlace.read(place);
        Book book = MakeBook.of(shop, ChosenProject.of(shop, project), of == null ? "" : of)
                .orElseThrow(() -> new BadInputException(
                        "found \"" + of + "\", expected the id of a part, a joint or an assembly of the project"));
        Photos photos = new Photos(shop);
        byte[] pdf = BookPdf.print(
                book, photos::printed, new BookPdf.Setting(sheet, book.head().seq() + "-" + book.lastHash(), ""));
        Files.write(out, pdf);
        surroundings
                .out()
                .println("Book of " + book.scope().name() + ": " + book.begun().size()
                        + (book.begun().size() == 1 ? " chapter" : " chapters") + " in " + out + "; head "
                        + book.head().paper());
        return ExitCode.DONE;
    }
}
