package fayline.app.pdf;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A square code that opens an address, drawn as one area. */
public final class QrCode {
    private QrCode() {}

    /**
     * Draws the code of an address, quiet zone included.
     *
     * @param address what it opens
     * @param sideMm length of its side
     */
    public static Drawing of(String address, double sideMm) {
        BitMatrix m = matrix(address, 4);
        double cell = sideMm / m.getWidth();
        List<List<Point>> runs = new ArrayList<>();
        for (int y = 0; y < m.getHeight(); y++) {
            for (int x = 0; x < m.getWidth(); x++) {
                if (m.get(x, y)) {
                    int from = x;
                    while (x + 1 < m.getWidth() && m.get(x + 1, y)) {
                        x++;
                    }
                    runs.add(Shape.Polygon.rectangle(
                                    from * cell, y * cell, (x - from + 1) * cell, cell, Ink.INK, Ink.NONE, 0)
                            .rings()
                            .get(0));
                }
            }
        }
        return new Drawing(
                sideMm, sideMm, "Code that opens " + address, List.of(new Shape.Polygon(runs, Ink.INK, Ink.NONE, 0)));
    }

    private static BitMatrix matrix(String address, int margin) {
        try {
            return new QRCodeWriter()
                    .encode(
                            address,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.MARGIN,
                                    margin));
        } catch (WriterException e) {
            throw new IllegalArgumentException("address too long for a code: " + address, e);
        }
    }

    /**
     * The code as lines of text for a dark screen: blocks where it is light, two rows of it in a line.
     *
     * @param address what it opens
     */
    public static String asText(String address) {
        BitMatrix m = matrix(address, 2);
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < m.getHeight(); y += 2) {
            for (int x = 0; x < m.getWidth(); x++) {
                boolean upper = !m.get(x, y);
                boolean lower = y + 1 < m.getHeight() && !m.get(x, y + 1);
                text.append(upper && lower ? '\u2588' : upper ? '\u2580' : lower ? '\u2584' : ' ');
            }
            text.append('\n');
        }
        return text.toString();
    }
}
