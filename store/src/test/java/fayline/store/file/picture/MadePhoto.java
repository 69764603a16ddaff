package fayline.store.file.picture;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Photos as a phone might take them, made here: a slope of colours with a red corner at the upper left, and a block of camera's data
 * that names a camera, a moment, a way up, a maker's own block and a place (57 degrees 1' 2" N, 12 degrees 3' 4" E).
 */
final class MadePhoto {
    static final String CAMERA = "Invented Camera 3";
    static final String MOMENT = "2026:03:02 07:10:00";
    static final String DAY_OF_PLACE = "2026:03:02";
    static final String MAKERS = "maker's own words, which nobody can read";

    private MadePhoto() {}

    /** Writes the photo that tests of other modules take. */
    public static void main(String[] args) throws IOException {
        Files.write(Path.of(args[0]), withExif(jpeg(2400, 1800), exif(ByteOrder.BIG_ENDIAN, 1)));
    }

    static byte[] jpeg(int width, int height) throws IOException {
        return written(width, height, "jpeg");
    }

    static byte[] png(int width, int height) throws IOException {
        return written(width, height, "png");
    }

    private static byte[] written(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setPaint(new GradientPaint(0, 0, new Color(40, 90, 60), width, height, new Color(210, 220, 240)));
        g.fillRect(0, 0, width, height);
        g.setColor(Color.RED);
        g.fillRect(0, 0, width / 4, height / 4);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** Puts a part in behind the beginning of a JPEG. */
    static byte[] with(byte[] jpeg, int marker, byte[] content) {
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + content.length + 4);
        out.put(jpeg, 0, 2).put((byte) 0xff).put((byte) marker).putShort((short) (content.length + 2));
        return out.put(content).put(jpeg, 2, jpeg.length - 2).array();
    }

    static byte[] withExif(byte[] jpeg, byte[] exif) {
        ByteBuffer content = ByteBuffer.allocate(exif.length + 6);
        return with(
                jpeg,
                0xe1,
                content.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII))
                        .put(exif)
                        .array());
    }

    /**
     * A block of camera's data: directory 0 at 8 with five fields, shot at 80 with two, place at 120 with seven, a preview's
     * directory at 220, values from 300 on.
     */
    static byte[] exif(ByteOrder order, int orientation) {
        ByteBuffer b = ByteBuffer.allocate(512).order(order);
        b.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII));
        b.putShort((short) 42).putInt(8);
        b.position(8);
        b.putShort((short) 5);
        text(b, 0x0110, CAMERA, 300);
        field(b, 0x0112, 3, 1).putShort((short) orientation).putShort((short) 0);
        text(b, 0x0132, MOMENT, 330);
        field(b, 0x8769, 4, 1).putInt(80);
        field(b, 0x8825, 4, 1).putInt(120);
        b.putInt(220);
        b.position(80);
        b.putShort((short) 2);
        text(b, 0x9003, MOMENT, 330);
        text(b, 0x927c, MAKERS, 360);
        b.putInt(0);
        b.position(120);
        place(b);
        b.position(220);
        b.putShort((short) 1);
        field(b, 0x0103, 3, 1).putShort((short) 6).putShort((short) 0);
        b.putInt(0);
        return b.array();
    }

    private static void place(ByteBuffer b) {
        b.putShort((short) 7);
        field(b, 0, 1, 4).put(new byte[] {2, 3, 0, 0});
        field(b, 1, 2, 2).put("N\0\0\0".getBytes(StandardCharsets.US_ASCII));
        degrees(b, 2, 420, 57, 1, 2);
        field(b, 3, 2, 2).put("E\0\0\0".getBytes(StandardCharsets.US_ASCII));
        degrees(b, 4, 444, 12, 3, 4);
        field(b, 6, 5, 1).putInt(468);
        b.putInt(468, 13).putInt(472, 1);
        text(b, 29, DAY_OF_PLACE, 480);
        b.putInt(0);
    }

    private static ByteBuffer field(ByteBuffer b, int tag, int type, int count) {
        return b.putShort((short) tag).putShort((short) type).putInt(count);
    }

    private static void text(ByteBuffer b, int tag, String text, int at) {
        byte[] bytes = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        field(b, tag, tag == 0x927c ? 7 : 2, bytes.length).putInt(at);
        for (int i = 0; i < bytes.length; i++) {
            b.put(at + i, bytes[i]);
        }
    }

    private static void degrees(ByteBuffer b, int tag, int at, int... values) {
        field(b, tag, 5, 3).putInt(at);
        for (int i = 0; i < 3; i++) {
            b.putInt(at + i * 8, values[i]).putInt(at + i * 8 + 4, 1);
        }
    }
}
