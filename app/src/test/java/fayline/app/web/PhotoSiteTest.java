package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.web.frame.Door;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import fayline.flow.result.step.StepResult;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Photos sent with a note by a browser that runs no script, and how they are shown. */
class PhotoSiteTest extends AtTheDemo {
    private byte[] photo = {};
    private String card = "";
    private StepResult step = demo.view().result().steps().get(0);

    @BeforeEach
    void take() throws Exception {
        photo = Files.readAllBytes(Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg"));
        step = demo.view().result().steps().stream()
                .filter(s -> demo.open().shop().state().step(s.id()).notes().isEmpty())
                .findFirst()
                .orElseThrow();
        String[] bits = step.id().split("/");
        card = "/card/" + bits[1] + "/" + bits[2] + "/" + bits[3];
    }

    private String csrf() throws Exception {
        return Browser.hidden(browser.page(card), "csrf");
    }

    private HttpResponse<String> send(String once, List<byte[]> photos, String... more) throws Exception {
        return browser.postParts(
                card + "/note",
                photos,
                Browser.and(more, "csrf", csrf(), "once", once, "by", demo.person(), "text", "blister, dr\u00fccken"));
    }

    private static String once() {
        return UUID.randomUUID().toString();
    }

    private List<StepRecord.Note> notes() {
        return demo.open().shop().state().step(step.id()).notes();
    }

    @Test
    void should_make_smaller_and_bare_what_a_browser_without_script_sends() throws Exception {
        HttpResponse<String> r = send(once(), List.of(photo), "people", "agreed", "location", "yes");
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(notes()).hasSize(1);
        assertThat(notes().get(0).text()).isEqualTo("blister, dr\u00fccken");
        Photo kept = notes().get(0).photos().get(0);
        assertThat(kept.people()).isEqualTo(Photo.People.AGREED);
        assertThat(kept.location()).as("a place goes with an original only").isFalse();
        assertThat(r.body())
                .contains("/photo/" + kept.sha256() + "/small")
                .contains("alt=\"Photo 1 of 1. Note,")
                .contains("2000 \u00d7 1500")
                .contains("the people in it agree");
        byte[] whole = browser.bytes("/photo/" + kept.sha256());
        assertThat(whole).hasSize((int) kept.bytes());
        assertThat(new String(whole, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        assertThat(ImageIO.read(new ByteArrayInputStream(whole)).getWidth()).isEqualTo(2000);
        assertThat(ImageIO.read(new ByteArrayInputStream(browser.bytes("/photo/" + kept.sha256() + "/small")))
                        .getWidth())
                .isEqualTo(480);
    }

    @Test
    void should_keep_the_original_without_its_place_when_the_original_is_ticked() throws Exception {
        assertThat(send(once(), List.of(photo), "original", "yes").statusCode()).isEqualTo(200);
        Photo kept = notes().get(0).photos().get(0);
        assertThat(kept.original()).isTrue();
        assertThat(kept.widthPx()).isEqualTo(2400);
        String whole = new String(browser.bytes("/photo/" + kept.sha256()), StandardCharsets.ISO_8859_1);
        assertThat(whole).contains("Exif").contains("Invented Camera 3");
        // the place of the made photo names a day and degrees; of neither anything is left
        assertThat(new String(photo, StandardCharsets.ISO_8859_1)).contains("2026:03:02\0");
        assertThat(whole).doesNotContain("2026:03:02\0").doesNotContain("\0\0\09\0\0\0\u0001\0\0\0\u0001");
    }

    @Test
    void should_keep_one_entry_and_one_file_when_the_form_is_sent_twice() throws Exception {
        String once = once();
        long before = demo.open().shop().state().head().seq();
        assertThat(send(once, List.of(photo), "original", "yes").statusCode()).isEqualTo(200);
        assertThat(send(once, List.of(photo), "original", "yes").statusCode()).isEqualTo(200);
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(before + 1);
        assertThat(notes()).hasSize(1);
        try (var files = Files.list(folder.resolve("data/files"))) {
            assertThat(files.filter(f ->
                            f.toString().contains(notes().get(0).photos().get(0).sha256())))
                    .hasSize(1);
        }
    }

    @Test
    void should_send_a_picture_as_nothing_but_a_picture() throws Exception {
        send(once(), List.of(photo));
        String address = "/photo/" + notes().get(0).photos().get(0).sha256();
        for (String path : List.of(address, address + "/small")) {
            HttpResponse<byte[]> r = browser.whole(path);
            assertThat(r.statusCode()).isEqualTo(200);
            assertThat(r.headers().firstValue("Content-Type")).contains("image/jpeg");
            assertThat(r.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(r.headers().firstValue("Content-Security-Policy")).contains("default-src 'none'; sandbox");
            assertThat(r.headers().firstValue("Content-Disposition").orElse(""))
                    .matches("inline; filename=\"photo-[0-9a-f]{12}(-small)?\\.jpg\"");
            assertThat(r.headers().firstValue("Cache-Control")).contains("private, no-cache");
            String tag = r.headers().firstValue("ETag").orElseThrow();
            HttpResponse<byte[]> again = browser.whole(path, "If-None-Match", tag);
            assertThat(again.statusCode()).isEqualTo(304);
            assertThat(again.body()).isEmpty();
        }
    }

    @Test
    void should_show_no_file_that_no_note_names() throws Exception {
        String stray = demo.open().shop().files().put(photo);
        for (String hash :
                List.of(stray, "0".repeat(64), "..%2fshop.db", "x", stray.toUpperCase(java.util.Locale.ROOT))) {
            assertThat(browser.get("/photo/" + hash).statusCode()).as(hash).isIn(400, 404);
            assertThat(browser.get("/photo/" + hash + "/small").statusCode())
                    .as(hash)
                    .isIn(400, 404);
        }
    }

    private void refused(List<byte[]> photos, int status, String... words) throws Exception {
        long before = demo.open().shop().state().head().seq();
        HttpResponse<String> r = send(once(), photos, "original", "yes");
        assertThat(r.statusCode()).isEqualTo(status);
        assertThat(r.body()).contains(words);
        assertThat(demo.open().shop().state().head().seq()).isEqualTo(before);
    }

    @Test
    void should_refuse_a_photo_of_too_many_bytes() throws Exception {
        refused(List.of(new byte[13_000_000]), 422, "photo 1", "a file of 13.0 MB", "at most 12 MB");
    }

    @Test
    void should_refuse_a_request_that_is_too_long_for_all_its_photos() throws Exception {
        byte[] eleven = new byte[11_000_000];
        refused(List.of(eleven, eleven, eleven), 413, "longer than 30 MB", "fewer pictures");
    }

    @Test
    void should_refuse_a_file_of_another_sort_whatever_it_calls_itself() throws Exception {
        byte[] page = "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
        refused(List.of(page), 422, "a text with markup", "a JPEG or PNG picture");
        refused(List.of("\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1)), 422, "a HEIC picture");
    }

    @Test
    void should_refuse_two_files_in_one() throws Exception {
        byte[] both = Arrays.copyOf(photo, photo.length + 20);
        System.arraycopy("PK\3\4".getBytes(StandardCharsets.ISO_8859_1), 0, both, photo.length, 4);
        refused(List.of(both), 422, "bytes behind its end", "a ZIP archive");
    }

    @Test
    void should_refuse_a_picture_that_claims_to_be_vast_before_it_is_decoded() throws Exception {
        // 100 000 x 100 000 in a PNG of 57 bytes: signature, header with its check sum, an end
        byte[] vast = java.util.HexFormat.of()
                .parseHex("89504e470d0a1a0a0000000d49484452000186a0000186a00802000000" + "00000000"
                        + "0000000049454e44ae426082");
        refused(List.of(vast), 422, "100 000 x 100 000 pixels", "at most 50 million pixels");
    }

    @Test
    void should_refuse_a_cut_photo_and_more_than_six() throws Exception {
        refused(List.of(Arrays.copyOf(photo, photo.length / 2)), 422, "breaks off");
        refused(Collections.nCopies(7, photo), 422, "7 pictures", "at most 6");
    }

    @Test
    void should_refuse_in_words_a_form_that_breaks_off_or_does_not_say_its_length() throws Exception {
        HttpResponse<String> cut = browser.body(card + "/note", "multipart/form-data", "no part at all");
        assertThat(cut.statusCode()).isEqualTo(400);
        assertThat(cut.body()).contains("breaks off");
        String endless = "POST " + card + "/note HTTP/1.1\r\nHost: 127.0.0.1:"
                + demo.server().port()
                + "\r\nContent-Type: multipart/form-data; boundary=b\r\nTransfer-Encoding: chunked\r\n"
                + "Connection: close\r\n\r\n5\r\n--b\r\n\r\n0\r\n\r\n";
        try (Socket socket = new Socket(
                        InetAddress.getLoopbackAddress(), demo.server().port());
                OutputStream out = socket.getOutputStream();
                InputStream in = socket.getInputStream()) {
            out.write(endless.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).startsWith("HTTP/1.1 411");
        }
        assertThat(Door.LONGEST_WITH_PICTURES).isEqualTo(30_000_000);
    }

    /** A note as a phone keeps it that had no network. */
    private HttpResponse<String> sendKept(String id, byte[]... photos) throws Exception {
        Value.Fields head = (Value.Fields) Value.parse(browser.page("/kept/head"));
        List<String> typed = new ArrayList<>(List.of("by", demo.person(), "text", "no network", "people", "nobody"));
        for (byte[] p : photos) {
            typed.add("photo");
            typed.add("data:image/jpeg;base64," + Base64.getEncoder().encodeToString(p));
        }
        Value.Fields entry = Value.Fields.NONE
                .with("id", id)
                .with("path", card + "/note?project=ousel-1")
                .with("project", "ousel-1")
                .with("by", demo.person())
                .with("at", demo.open().shop().now().minusSeconds(60).toString())
                .with("fields", typed);
        Value.Fields batch = Value.Fields.NONE
                .with("format", 1)
                .with("record", head.text("record"))
                .with("entries", new Value.Many(List.of(entry)));
        return browser.postJson("/kept/send", head.text("token"), batch.canonical());
    }

    @Test
    void should_take_photos_that_a_phone_kept_once_and_refuse_by_the_same_rules() throws Exception {
        byte[] large = new byte[3_000_000];
        System.arraycopy(photo, 0, large, 0, photo.length);
        String id = once();
        assertThat(sendKept(id, photo, photo).body()).contains("\"what\":\"taken\"");
        assertThat(sendKept(id, photo, photo).body()).contains("\"what\":\"there\"");
        assertThat(notes()).hasSize(1);
        assertThat(notes().get(0).photos()).hasSize(2);
        assertThat(notes().get(0).photos().get(0).people()).isEqualTo(Photo.People.NOBODY);
        assertThat(sendKept(once(), Arrays.copyOf(photo, 4_000)).body())
                .contains("\"what\":\"refused\"")
                .contains("breaks off");
        // noughts behind a picture are cut off, as those that phones append are
        assertThat(sendKept(once(), large).body()).contains("\"what\":\"taken\"");
        assertThat(sendKept(once(), new byte[9_500_000]).statusCode()).isEqualTo(413);
    }

    @Test
    void should_take_files_nowhere_else() throws Exception {
        HttpResponse<String> r = browser.postParts(card + "/reading", List.of(photo), "csrf", csrf());
        assertThat(r.statusCode()).isEqualTo(415);
    }
}
