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
        BitMatrix m;
        try {
            m = new QRCodeWriter()
                    .encode(
                            address,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 4));
        } catch (WriterException e) {
            throw new IllegalArgumentException("address too long for a code: " + address, e);
        }
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
}
