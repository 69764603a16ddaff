package fayline.store.file.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The first sheet of a spreadsheet (ECMA-376, .xlsx). Values only: of a formula the value that stands in the file is taken, and nothing is
 * evaluated. What unpacks to far more than it holds is refused by the library's own limits.
 */
final class SpreadsheetReader {
    private static final int MOST_ROWS = 5000;
    private static final int MOST_COLUMNS = 50;
    private static final long MOST_ENTRY_BYTES = 64L << 20;

    static {
        ZipSecureFile.setMaxEntrySize(MOST_ENTRY_BYTES);
    }

    private SpreadsheetReader() {}

    static Sheet read(byte[] bytes) throws UnreadableSheetException {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            if (book.getNumberOfSheets() == 0) {
                throw new UnreadableSheetException("a spreadsheet without a sheet");
            }
            XSSFSheet sheet = book.getSheetAt(0);
            List<CsvTable.Row> rows = new ArrayList<>();
            for (Row row : sheet) {
                if (row.getRowNum() >= MOST_ROWS || row.getLastCellNum() > MOST_COLUMNS) {
                    throw new UnreadableSheetException(
                            "more than " + MOST_ROWS + " rows or " + MOST_COLUMNS + " columns");
                }
                rows.add(new CsvTable.Row(row.getRowNum() + 1L, cells(row)));
            }
            return new Sheet(
                    sheet.getSheetName(),
                    rows.isEmpty()
                            ? new CsvTable(List.of(), List.of())
                            : new CsvTable(rows.get(0).cells(), rows.subList(1, rows.size())));
        } catch (IOException | RuntimeException e) {
            // The library tells of damaged and hostile files by a dozen kinds of unchecked exceptions.
            throw new UnreadableSheetException("a spreadsheet that cannot be read: " + e.getMessage(), e);
        }
    }

    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getLastCellNum(); i++) {
            Cell cell = row.getCell(i);
            cells.add(cell == null ? "" : text(cell));
        }
        return cells;
    }

    private static String text(Cell cell) {
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case STRING -> cell.getStringCellValue();
            case BOOLEAN -> cell.getBooleanCellValue() ? "yes" : "no";
            case NUMERIC ->
                DateUtil.isCellDateFormatted(cell)
                        ? day(cell)
                        : NumberToTextConverter.toText(cell.getNumericCellValue());
            case ERROR -> "#error";
            default -> "";
        };
    }

    private static String day(Cell cell) {
        java.time.LocalDateTime at = cell.getLocalDateTimeCellValue();
        return at.toLocalTime().equals(LocalTime.MIDNIGHT) ? at.toLocalDate().toString() : at.toString();
    }
}
