package fayline.app.bench.cases;

import fayline.app.usecase.cases.RawFile;
import java.util.List;
import java.util.Optional;

/** A way in which files hold cases, told by their form. */
interface Layout {
    /** The layouts there are; at most one recognises a file. */
    static List<Layout> all() {
        return List.of(new QuantityLayout(), new PairLayout(), new KindLayout(), new CutLayout());
    }

    /**
     * Reads a file.
     *
     * @param file the file as it lies in the folder
     * @return its cases, or empty if it is not of this layout
     * @throws UnreadableCasesException if it has the form of this layout and does not keep it
     */
    Optional<CaseFile> read(RawFile file);
}
