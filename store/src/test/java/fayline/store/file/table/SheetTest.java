package fayline.store.file.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class SheetTest {
    private static byte[] spreadsheet() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.getCreationHelper().createDataFormat().getFormat("yyyy-mm-dd"));
            XSSFRow header = book.createSheet("Lots").createRow(0);
            header.createCell(0).setCellValue("lot");
            header.createCell(2).setCellValue("received");
            XSSFRow row = book.getSheetAt(0).createRow(3);
            row.createCell(0).setCellValue(2026);
            row.createCell(1).setCellFormula("1+SUM(A1:A9)");
            row.createCell(2).setCellValue(LocalDate.of(2026, 3, 2));
            row.getCell(2).setCellStyle(day);
            row.createCell(3).setCellValue(true);
            row.createCell(4).setCellValue(0.25);
            book.write(out);
            return out.toByteArray();
        }
    }

    @Test
    void should_read_values_of_a_spreadsheet_and_work_no_formula_out() throws Exception {
        Sheet sheet = Sheet.read(spreadsheet());
        assertThat(sheet.name()).isEqualTo("Lots");
        assertThat(sheet.table().header()).containsExactly("lot", "", "received");
        assertThat(sheet.table().rows()).hasSize(1);
        assertThat(sheet.table().rows().get(0).line()).isEqualTo(4);
        // The formula was never worked out: the value that stands in the file is nought.
        assertThat(sheet.table().rows().get(0).cells()).containsExactly("2026", "0", "2026-03-02", "yes", "0.25");
    }

    @Test
    void should_read_comma_separated_text_with_quotes_and_a_mark_of_its_order() throws Exception {
        Sheet sheet = Sheet.read("\uFEFFlot,of\r\nA-1,\"g,200\"\r\n".getBytes(StandardCharsets.UTF_8));
        assertThat(sheet.table().header()).containsExactly("lot", "of");
        assertThat(sheet.table().rows().get(0).cells()).containsExactly("A-1", "g,200");
    }

    @Test
    void should_refuse_what_is_no_table_is_damaged_or_unpacks_to_far_more_than_it_is() throws Exception {
        assertThatThrownBy(() -> Sheet.read(new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1}))
                .isInstanceOf(UnreadableSheetException.class)
                .hasMessageContaining("neither UTF-8");
        byte[] whole = spreadsheet();
        assertThatThrownBy(() -> Sheet.read(Arrays.copyOf(whole, whole.length / 2)))
                .isInstanceOf(UnreadableSheetException.class);
        byte[] swollen = swollen(whole);
        assertThat(swollen.length).isLessThan(1 << 20);
        assertThatThrownBy(() -> Sheet.read(swollen))
                .isInstanceOf(UnreadableSheetException.class)
                .hasMessageContaining("cannot be read");
        assertThatThrownBy(() -> Sheet.read(new byte[(10 << 20) + 1])).hasMessageContaining("more than");
    }

    /** The same spreadsheet with 40 MB of spaces in its sheet. */
    private static byte[] swollen(byte[] whole) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(whole));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
                zip.putNextEntry(new ZipEntry(e.getName()));
                String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                boolean sheet = e.getName().endsWith("sheet1.xml");
                zip.write((sheet ? text.replace("</sheetData>", " ".repeat(40_000_000) + "</sheetData>") : text)
                        .getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    @Test
    void should_name_columns_as_spreadsheets_do() {
        assertThat(Sheet.column(0)).isEqualTo("A");
        assertThat(Sheet.column(25)).isEqualTo("Z");
        assertThat(Sheet.column(26)).isEqualTo("AA");
        assertThat(Sheet.column(701)).isEqualTo("ZZ");
    }
}
