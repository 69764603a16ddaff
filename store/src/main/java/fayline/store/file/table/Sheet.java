package fayline.store.file.table;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * A table somebody sent, comma-separated text or the first sheet of a spreadsheet, read whole.
 *
 * @param name how its cells are named in messages: the sheet's name, or {@code table}
 * @param table its cells as text
 */
public record Sheet(String name, CsvTable table) {
    /** No table of lots is longer. */
    private static final int MOST_BYTES = 10 << 20;

    private static final int LETTERS = 26;

    /**
     * Reads a file by what it is, whatever its name.
     *
     * @param bytes the file
     * @throws UnreadableSheetException if it is no such file, damaged or too large
     */
    public static Sheet read(byte[] bytes) throws UnreadableSheetException {
        if (bytes.length > MOST_BYTES) {
            throw new UnreadableSheetException(bytes.length + " bytes, more than " + MOST_BYTES);
        }
        if (bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K') {
            return SpreadsheetReader.read(bytes);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Sheet("table", CsvTable.read(new StringReader(text)));
        } catch (CharacterCodingException e) {
            throw new UnreadableSheetException("bytes that are neither UTF-8 text nor a spreadsheet (.xlsx)", e);
        } catch (IOException e) {
            throw new UnreadableSheetException("text that is no table: " + e.getMessage(), e);
        }
    }

    /**
     * The letters of a column, as spreadsheets call it.
     *
     * @param index its place, from 0
     */
    public static String column(int index) {
        StringBuilder letters = new StringBuilder();
        for (int i = index; i >= 0; i = i / LETTERS - 1) {
            letters.insert(0, (char) ('A' + i % LETTERS));
        }
        return letters.toString();
    }
}
