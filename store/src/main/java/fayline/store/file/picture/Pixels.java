package fayline.store.file.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Decodes a judged picture, never at more than about three times the wanted size, turns it upright and writes it as JPEG. One
 * picture at a time, whoever asks, so that pictures sent together need no more memory than one.
 */
final class Pixels {
    private static final float QUALITY = 0.85f;
    private static final Object ONE_AT_A_TIME = new Object();

    private Pixels() {}

    /**
     * A picture made smaller, as JPEG.
     *
     * @param clean a picture as {@link JpegParts} or {@link PngParts} write it
     * @param size its size
     * @param orientation which way up it is, 1 to 8 as Exif counts
     * @param longEdgePx the longer edge afterwards, in pixels; a smaller picture keeps its size
     * @throws PictureRefusedException if it cannot be decoded
     */
    static byte[] smaller(byte[] clean, PictureSize size, int orientation, int longEdgePx)
            throws PictureRefusedException {
        synchronized (ONE_AT_A_TIME) {
            try {
                BufferedImage read = read(clean, size, longEdgePx);
                return jpeg(upright(scaled(read, longEdgePx), orientation));
            } catch (IOException | RuntimeException e) {
                throw new PictureRefusedException(
                        "a picture that cannot be decoded (" + e.getMessage() + ")",
                        "a sound one",
                        "Send it once more; if it stays so, take it anew.");
            }
        }
    }

    /**
     * The pixels of a small picture.
     *
     * @param jpeg a picture that {@link #smaller} made
     * @throws PictureRefusedException if it cannot be decoded
     */
    static PixelRows rows(byte[] jpeg) throws PictureRefusedException {
        try {
            BufferedImage read = ImageIO.read(new ByteArrayInputStream(jpeg));
            int w = read.getWidth();
            int h = read.getHeight();
            return new PixelRows(w, h, read.getRGB(0, 0, w, h, null, 0, w));
        } catch (IOException e) {
            throw new PictureRefusedException("a picture that cannot be decoded", "a sound one", "");
        }
    }

    private static BufferedImage read(byte[] clean, PictureSize size, int longEdgePx) throws IOException {
        String format = JpegParts.begins(clean) ? "jpeg" : "png";
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(clean))) {
            reader.setInput(in, true, true);
            ImageReadParam param = reader.getDefaultReadParam();
            int step = Math.max(1, (int) Math.round(size.longEdgePx() / (2.0 * longEdgePx)));
            param.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, param);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage scaled(BufferedImage from, int longEdgePx) {
        BufferedImage now = from;
        double wanted = Math.min(1, longEdgePx / (double) Math.max(from.getWidth(), from.getHeight()));
        int width = Math.max(1, (int) Math.round(from.getWidth() * wanted));
        int height = Math.max(1, (int) Math.round(from.getHeight() * wanted));
        // by halves first: one step over more than two pixels would pass some of them over
        while (now.getWidth() > 2 * width) {
            now = drawn(now, Math.max(width, now.getWidth() / 2), Math.max(height, now.getHeight() / 2));
        }
        return drawn(now, width, height);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height) {
        AffineTransform scale =
                AffineTransform.getScaleInstance(width / (double) from.getWidth(), height / (double) from.getHeight());
        return drawn(from, width, height, scale);
    }

    private static BufferedImage drawn(BufferedImage from, int width, int height, AffineTransform how) {
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = to.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(from, how, null);
        g.dispose();
        return to;
    }

    /** Turned and mirrored as Exif 2.32 section 4.6.4 A counts the ways up. */
    private static BufferedImage upright(BufferedImage from, int orientation) {
        int w = from.getWidth();
        int h = from.getHeight();
        return switch (orientation) {
            case 2 -> drawn(from, w, h, new AffineTransform(-1, 0, 0, 1, w, 0));
            case 3 -> drawn(from, w, h, new AffineTransform(-1, 0, 0, -1, w, h));
            case 4 -> drawn(from, w, h, new AffineTransform(1, 0, 0, -1, 0, h));
            case 5 -> drawn(from, h, w, new AffineTransform(0, 1, 1, 0, 0, 0));
            case 6 -> drawn(from, h, w, new AffineTransform(0, 1, -1, 0, h, 0));
            case 7 -> drawn(from, h, w, new AffineTransform(0, -1, -1, 0, h, w));
            case 8 -> drawn(from, h, w, new AffineTransform(0, -1, 1, 0, 0, w));
            default -> from;
        };
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(picture, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
