package fayline.app.pdf;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads a square code in a picture. */
public final class QrReader {
    private static final Map<DecodeHintType, ?> HARDER = Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE);

    private QrReader() {}

    /**
     * What the code in a picture says.
     *
     * @param widthPx the picture's width
     * @param heightPx its height
     * @param rgb its pixels, row by row from the upper left, red, green and blue in the lower three bytes
     * @return nothing where no code can be read
     */
    public static Optional<String> read(int widthPx, int heightPx, int[] rgb) {
        LuminanceSource light = new RGBLuminanceSource(widthPx, heightPx, rgb);
        return Stream.of(new HybridBinarizer(light), new GlobalHistogramBinarizer(light))
                .flatMap(b -> text(new BinaryBitmap(b)).stream())
                .findFirst();
    }

    private static Optional<String> text(BinaryBitmap picture) {
        try {
            return Optional.of(new QRCodeReader().decode(picture, HARDER).getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }
}
