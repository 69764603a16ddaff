package fayline.store.file.table;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a table as comma-separated text (RFC 4180). A cell that a spreadsheet would take for a formula is led by an apostrophe,
 * so that nobody's title can compute anything.
 */
public final class CsvText {
    private static final String FORMULA_STARTS = "=+-@\t\r\n";

    private CsvText() {}

    /**
     * The text of a table.
     *
     * @param header cells of the first line
     * @param rows the lines below it
     */
    public static String of(List<String> header, List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(header);
            for (List<String> row : rows) {
                printer.printRecord(row.stream().map(CsvText::harmless));
            }
        } catch (IOException e) {
            throw new IllegalStateException("a table could not be written", e);
        }
        return text.toString();
    }

    private static String harmless(String cell) {
        return !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}
