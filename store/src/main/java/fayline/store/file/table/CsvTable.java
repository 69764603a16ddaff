package fayline.store.file.table;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A comma-separated file (RFC 4180) in UTF-8, read whole.
 *
 * @param header the cells of the first line; empty for an empty file
 * @param rows the lines below it
 */
public record CsvTable(List<String> header, List<Row> rows) {
    /** Copies the lists. */
    public CsvTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @throws IOException if it cannot be read, is not UTF-8 or its quotes do not close
     */
    public static CsvTable read(Path file) throws IOException {
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return read(reader);
        }
    }

    /**
     * Reads a text.
     *
     * @param reader the text; the caller closes it
     * @throws IOException if it cannot be read or its quotes do not close
     */
    static CsvTable read(Reader reader) throws IOException {
        try (CSVParser parser = CSVParser.parse(reader, CSVFormat.RFC4180)) {
            List<Row> all = new ArrayList<>();
            for (CSVRecord r : parser) {
                all.add(new Row(parser.getCurrentLineNumber(), r.toList()));
            }
            return all.isEmpty()
                    ? new CsvTable(List.of(), List.of())
                    : new CsvTable(withoutMark(all.get(0).cells()), all.subList(1, all.size()));
        } catch (UncheckedIOException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    /** Spreadsheets put a byte-order mark before the first cell. */
    private static List<String> withoutMark(List<String> header) {
        List<String> h = new ArrayList<>(header);
        if (!h.isEmpty() && h.get(0).startsWith("\uFEFF")) {
            h.set(0, h.get(0).substring(1));
        }
        return h;
    }

    /**
     * One line below the header.
     *
     * @param line the line on which it ends, counted from 1
     * @param cells its cells
     */
    public record Row(long line, List<String> cells) {
        /** Copies the list. */
        public Row {
            cells = List.copyOf(cells);
        }
    }
}
