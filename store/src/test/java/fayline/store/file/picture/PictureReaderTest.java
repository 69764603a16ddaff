package fayline.store.file.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import fayline.flow.record.payload.Photo;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What was left of a camera's data is read back by another program's reader (metadata-extractor 2.19.0), not by our own.
 */
class PictureReaderTest {
    private static byte[] photo(ByteOrder order, int orientation) throws IOException {
        return MadePhoto.withExif(MadePhoto.jpeg(640, 480), MadePhoto.exif(order, orientation));
    }

    private static Metadata metadata(byte[] file) throws Exception {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    }

    private static boolean holds(byte[] file, byte[] wanted) {
        return new String(file, StandardCharsets.ISO_8859_1).contains(new String(wanted, StandardCharsets.ISO_8859_1));
    }

    private static boolean holds(byte[] file, String wanted) {
        return holds(file, wanted.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static byte[] and(byte[] a, byte[] b) {
        byte[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }

    private static byte[] and(byte[] a, String b) {
        return and(a, b.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static BufferedImage decoded(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file));
    }

    @TestFactory
    Stream<DynamicTest> should_leave_out_the_place_of_an_original_and_keep_the_rest_in_either_byte_order() {
        return Stream.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)
                .map(order -> DynamicTest.dynamicTest(order.toString(), () -> {
                    byte[] sent = photo(order, 6);
                    assertThat(metadata(sent).getFirstDirectoryOfType(GpsDirectory.class))
                            .as("the made photo does hold a place")
                            .isNotNull();
                    PictureReader.Read read = PictureReader.read(sent, true, false);
                    Metadata left = metadata(read.bytes());
                    assertThat(left.getFirstDirectoryOfType(GpsDirectory.class)).isNull();
                    ExifIFD0Directory camera = left.getFirstDirectoryOfType(ExifIFD0Directory.class);
                    assertThat(camera.getString(ExifIFD0Directory.TAG_MODEL)).isEqualTo(MadePhoto.CAMERA);
                    assertThat(camera.getInt(ExifIFD0Directory.TAG_ORIENTATION)).isEqualTo(6);
                    assertThat(left.getFirstDirectoryOfType(ExifSubIFDDirectory.class)
                                    .getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL))
                            .isEqualTo(MadePhoto.MOMENT);
                    for (Directory d : left.getDirectories()) {
                        assertThat(d.getErrors()).as(d.getName()).isEmpty();
                    }
                    assertThat(read.original()).isTrue();
                    assertThat(read.location()).isFalse();
                    // nor does anything of it stand anywhere in the bytes
                    assertThat(holds(read.bytes(), MadePhoto.DAY_OF_PLACE + "\0"))
                            .isFalse();
                    assertThat(holds(read.bytes(), MadePhoto.MAKERS)).isFalse();
                    byte[] degrees = ByteBuffer.allocate(12)
                            .order(order)
                            .putInt(57)
                            .putInt(1)
                            .putInt(1)
                            .array();
                    assertThat(holds(sent, degrees)).isTrue();
                    assertThat(holds(read.bytes(), degrees)).isFalse();
                }));
    }

    @Test
    void should_keep_the_pixels_of_an_original_bit_for_bit() throws Exception {
        byte[] sent = photo(ByteOrder.BIG_ENDIAN, 1);
        byte[] kept = PictureReader.read(sent, true, false).bytes();
        BufferedImage a = decoded(sent);
        BufferedImage b = decoded(kept);
        assertThat(b.getRGB(0, 0, 640, 480, null, 0, 640)).isEqualTo(a.getRGB(0, 0, 640, 480, null, 0, 640));
        assertThat(PictureReader.kept(kept).bytes())
                .as("read anew it stays as it is")
                .isEqualTo(kept);
    }

    @Test
    void should_leave_the_place_in_when_that_is_asked_for() throws Exception {
        PictureReader.Read read = PictureReader.read(photo(ByteOrder.BIG_ENDIAN, 1), true, true);
        assertThat(read.location()).isTrue();
        assertThat(metadata(read.bytes())
                        .getFirstDirectoryOfType(GpsDirectory.class)
                        .getGeoLocation()
                        .getLatitude())
                .isCloseTo(57 + 1 / 60.0 + 2 / 3600.0, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(PictureReader.read(MadePhoto.jpeg(64, 48), true, true).location())
                .as("where there is none, none is claimed")
                .isFalse();
    }

    @Test
    void should_drop_the_whole_block_when_it_points_beyond_itself() throws Exception {
        byte[] exif = MadePhoto.exif(ByteOrder.BIG_ENDIAN, 1);
        ByteBuffer.wrap(exif).putInt(8 + 2 + 4 * 12 + 8, 0x7fffffff);
        PictureReader.Read read = PictureReader.read(MadePhoto.withExif(MadePhoto.jpeg(64, 48), exif), true, false);
        assertThat(read.leftOut()).anyMatch(s -> s.contains("could not be read"));
        assertThat(holds(read.bytes(), MadePhoto.CAMERA)).isFalse();
    }

    @Test
    void should_end_whatever_a_damaged_block_points_at() throws Exception {
        byte[] jpeg = MadePhoto.jpeg(16, 16);
        Random random = new Random(5);
        int kept = 0;
        for (int i = 0; i < 20_000; i++) {
            byte[] exif = MadePhoto.exif(i % 2 == 0 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN, 1);
            for (int n = random.nextInt(6); n >= 0; n--) {
                exif[random.nextInt(240)] = (byte) random.nextInt(256);
            }
            byte[] left = ExifBlock.withoutLocation(exif).orElse(new byte[0]);
            kept += left.length > 0 ? 1 : 0;
            assertThat(left.length).isIn(0, exif.length);
        }
        assertThat(kept).isBetween(1_000, 19_999);
        assertThat(PictureReader.read(jpeg, true, false).bytes()).isNotEmpty();
    }

    @Test
    void should_make_smaller_upright_and_bare_what_no_phone_made_smaller() throws Exception {
        byte[] sent = MadePhoto.withExif(MadePhoto.jpeg(3000, 2000), MadePhoto.exif(ByteOrder.BIG_ENDIAN, 6));
        PictureReader.Read read = PictureReader.read(sent, false, true);
        assertThat(read.sort()).isEqualTo(Photo.Sort.JPEG);
        assertThat(new int[] {read.widthPx(), read.heightPx()}).containsExactly(1333, 2000);
        assertThat(read.original()).isFalse();
        assertThat(read.location()).isFalse();
        assertThat(metadata(read.bytes()).containsDirectoryOfType(ExifIFD0Directory.class))
                .isFalse();
        // the red corner, upper left as stored, is upper right once the picture is turned as way up 6 says
        BufferedImage upright = decoded(read.bytes());
        assertThat(isRed(upright, 1200, 200)).isTrue();
        assertThat(isRed(upright, 200, 200)).isFalse();
    }

    private static boolean isRed(BufferedImage image, int x, int y) {
        int rgb = image.getRGB(x, y);
        return (rgb >> 16 & 255) > 200 && (rgb >> 8 & 255) < 60 && (rgb & 255) < 60;
    }

    /** Where the red corner lies for each way up, from Exif 2.32 section 4.6.4 A (row 0 and column 0 of the stored picture). */
    @Test
    void should_turn_every_way_up_as_the_standard_counts_them() throws Exception {
        Map<Integer, int[]> corners = new LinkedHashMap<>();
        corners.put(1, new int[] {0, 0});
        corners.put(2, new int[] {1, 0});
        corners.put(3, new int[] {1, 1});
        corners.put(4, new int[] {0, 1});
        corners.put(5, new int[] {0, 0});
        corners.put(6, new int[] {1, 0});
        corners.put(7, new int[] {1, 1});
        corners.put(8, new int[] {0, 1});
        for (Map.Entry<Integer, int[]> c : corners.entrySet()) {
            BufferedImage small = decoded(PictureReader.small(photo(ByteOrder.LITTLE_ENDIAN, c.getKey())));
            boolean lying = c.getKey() < 5;
            assertThat(small.getWidth() > small.getHeight())
                    .as("way " + c.getKey())
                    .isEqualTo(lying);
            assertThat(Math.max(small.getWidth(), small.getHeight())).isEqualTo(PictureReader.SMALL_EDGE_PX);
            int x = small.getWidth() / 16 + c.getValue()[0] * small.getWidth() * 14 / 16;
            int y = small.getHeight() / 16 + c.getValue()[1] * small.getHeight() * 14 / 16;
            assertThat(isRed(small, x, y)).as("way " + c.getKey()).isTrue();
        }
    }

    @Test
    void should_keep_as_it_is_what_the_phone_made_smaller() throws Exception {
        byte[] sent = MadePhoto.jpeg(2000, 1500);
        assertThat(PictureReader.read(sent, false, false).bytes()).isEqualTo(sent);
        byte[] drawn = MadePhoto.png(300, 200);
        PictureReader.Read png = PictureReader.read(drawn, false, false);
        assertThat(png.sort()).isEqualTo(Photo.Sort.PNG);
        assertThat(PictureReader.read(MadePhoto.png(2400, 100), false, false).sort())
                .isEqualTo(Photo.Sort.JPEG);
    }

    @Test
    void should_write_nothing_but_the_picture_whatever_else_stands_in_it() throws Exception {
        byte[] jpeg = MadePhoto.with(
                MadePhoto.jpeg(64, 48), 0xfe, "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));
        jpeg = MadePhoto.with(
                jpeg,
                0xe1,
                "http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude='57'/>".getBytes(StandardCharsets.UTF_8));
        jpeg = MadePhoto.with(jpeg, 0xed, "Photoshop 3.0\0city".getBytes(StandardCharsets.UTF_8));
        for (boolean original : new boolean[] {true, false}) {
            byte[] kept = PictureReader.read(jpeg, original, true).bytes();
            assertThat(holds(kept, "script")).isFalse();
            assertThat(holds(kept, "GPSLatitude")).isFalse();
            assertThat(holds(kept, "city")).isFalse();
        }
        byte[] png = withChunk(MadePhoto.png(64, 48), "tEXt", "Location\0somewhere".getBytes(StandardCharsets.UTF_8));
        assertThat(holds(PictureReader.read(png, true, true).bytes(), "somewhere"))
                .isFalse();
    }

    @Test
    void should_leave_out_what_phones_append_behind_a_picture() throws Exception {
        byte[] picture = MadePhoto.jpeg(64, 48);
        for (byte[] tail : new byte[][] {
            MadePhoto.jpeg(32, 24),
            "\0\0\0\u0018ftypmp42 film".getBytes(StandardCharsets.ISO_8859_1),
            new byte[40],
            "x SEFT".getBytes(StandardCharsets.US_ASCII)
        }) {
            PictureReader.Read read = PictureReader.read(and(picture, tail), true, false);
            assertThat(read.bytes()).isEqualTo(picture);
            assertThat(read.leftOut()).hasSize(1).allMatch(s -> s.startsWith(tail.length + " bytes"));
        }
    }

    private static byte[] withChunk(byte[] png, String name, byte[] content) {
        ByteBuffer out = ByteBuffer.allocate(png.length + content.length + 12);
        byte[] typed = and(name.getBytes(StandardCharsets.US_ASCII), content);
        CRC32 sum = new CRC32();
        sum.update(typed);
        out.put(png, 0, 33).putInt(content.length).put(typed).putInt((int) sum.getValue());
        return out.put(png, 33, png.length - 33).array();
    }

    /** A JPEG whose frame claims another size. */
    private static byte[] claiming(byte[] jpeg, int width, int height) {
        byte[] b = jpeg.clone();
        for (int i = 2; i < b.length - 9; i++) {
            if ((b[i] & 255) == 0xff && (b[i + 1] & 255) == 0xc0) {
                ByteBuffer.wrap(b).putShort(i + 5, (short) height).putShort(i + 7, (short) width);
                return b;
            }
        }
        throw new IllegalArgumentException("no frame");
    }

    private static byte[] claimingPng(byte[] png, int width, int height) {
        byte[] b = png.clone();
        ByteBuffer.wrap(b).putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(b, 12, 17);
        ByteBuffer.wrap(b).putInt(29, (int) sum.getValue());
        return b;
    }

    private static Map<String, byte[]> refused() throws IOException {
        byte[] jpeg = MadePhoto.jpeg(640, 480);
        byte[] png = MadePhoto.png(640, 480);
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put("a picture of 60 000 x 60 000 pixels", claiming(jpeg, 60_000, 60_000));
        all.put("a picture of 100 000 x 100 000 pixels", claimingPng(png, 100_000, 100_000));
        all.put("a picture of 9 000 x 9 000 pixels", claiming(jpeg, 9_000, 9_000));
        all.put("a picture of 2 147 483 647 x 1 pixels", claimingPng(png, Integer.MAX_VALUE, 1));
        all.put("a picture of 640 x 0 pixels", claiming(jpeg, 640, 0));
        all.put("a JPEG picture that breaks off", Arrays.copyOf(jpeg, jpeg.length - 2));
        all.put("a PNG picture that breaks off", Arrays.copyOf(png, png.length - 5));
        all.put("behind its end (a ZIP archive)", and(jpeg, "PK\3\4rest"));
        all.put("behind its end (a text with markup)", and(jpeg, "<html><script>"));
        all.put("behind its end (a PDF)", and(png, "%PDF-1.7"));
        all.put("behind its end (something unknown)", and(png, new byte[] {1}));
        all.put("a WebP picture", "RIFF\0\0\0\0WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a HEIC picture", "\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1));
        all.put("an AVIF picture", "\0\0\0\u0018ftypavif".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a GIF picture", "GIF89a".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a TIFF or raw picture", "II*\0\10\0\0\0".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a film", "\0\0\0\u0018ftypmp42".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a PDF", "%PDF-1.7".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a text with markup", "<svg onload='alert(1)'/>".getBytes(StandardCharsets.ISO_8859_1));
        all.put("a file of an unknown sort", new byte[] {7, 7, 7, 7});
        all.put("an empty file", new byte[0]);
        all.put("a file of 12.0 MB", new byte[PictureReader.MOST_BYTES + 1]);
        all.put("a part whose check sum is wrong", flipped(png, 60));
        return all;
    }

    private static byte[] flipped(byte[] b, int at) {
        byte[] c = b.clone();
        c[at] ^= 0x40;
        return c;
    }

    @TestFactory
    Stream<DynamicTest> should_refuse_in_words_what_is_no_picture_of_ours() throws IOException {
        return refused().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    for (boolean original : new boolean[] {true, false}) {
                        assertThatThrownBy(() -> PictureReader.read(e.getValue(), original, false))
                                .isInstanceOf(PictureRefusedException.class)
                                .hasMessageContaining(e.getKey())
                                .hasMessageContaining("expected ");
                    }
                }));
    }

    @Test
    void should_refuse_a_picture_cut_at_any_byte() throws Exception {
        for (byte[] whole : new byte[][] {MadePhoto.jpeg(160, 120), MadePhoto.png(160, 120)}) {
            for (int n = 0; n < whole.length; n++) {
                byte[] cut = Arrays.copyOf(whole, n);
                assertThatThrownBy(() -> PictureReader.read(cut, true, false))
                        .as(n + " of " + whole.length + " bytes")
                        .isInstanceOf(PictureRefusedException.class);
            }
        }
    }

    @Test
    void should_answer_with_a_picture_or_a_refusal_and_nothing_else_when_bytes_are_flipped() throws Exception {
        byte[] whole = MadePhoto.withExif(MadePhoto.jpeg(160, 120), MadePhoto.exif(ByteOrder.BIG_ENDIAN, 3));
        Random random = new Random(11);
        int taken = 0;
        int refused = 0;
        for (int i = 0; i < 1_500; i++) {
            byte[] b = whole.clone();
            for (int n = random.nextInt(3); n >= 0; n--) {
                b[random.nextInt(b.length)] = (byte) random.nextInt(256);
            }
            try {
                PictureReader.read(b, i % 2 == 0, false);
                taken++;
            } catch (PictureRefusedException e) {
                refused++;
            }
        }
        assertThat(taken).isPositive();
        assertThat(refused).isPositive();
    }

    @Test
    void should_refuse_more_scans_than_a_camera_writes() throws Exception {
        byte[] jpeg = MadePhoto.jpeg(16, 16);
        int scan = 2;
        while ((jpeg[scan] & 255) != 0xff || (jpeg[scan + 1] & 255) != 0xda) {
            scan++;
        }
        byte[] one = Arrays.copyOfRange(jpeg, scan, jpeg.length - 2);
        ByteArrayOutputStream many = new ByteArrayOutputStream();
        many.write(jpeg, 0, jpeg.length - 2);
        for (int i = 0; i < 70; i++) {
            many.writeBytes(one);
        }
        many.write(jpeg, jpeg.length - 2, 2);
        assertThatThrownBy(() -> PictureReader.read(many.toByteArray(), true, false))
                .isInstanceOf(PictureRefusedException.class)
                .hasMessageContaining("scans");
    }
}
