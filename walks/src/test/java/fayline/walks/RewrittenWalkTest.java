package fayline.walks;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import fayline.flow.record.proof.Digest;
import fayline.flow.record.proof.HashTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A record that is put back and goes on otherwise: each phone that saw more of it says so, and one that goes on is believed. */
@Tag("fault")
class RewrittenWalkTest {
    private static final String CUT = "/card/chine-doubler-left/1/cut?project=ousel-1";

    private static Shopfloor shop;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.open();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    private static void note(Page page, String text) {
        page.navigate(shop.at(CUT));
        Shopfloor.noteAndLeave(page, text);
        // a server that has just begun may take its time; what was kept meanwhile is sent from here
        page.navigate(shop.at("/kept"));
        assertThat(page.locator("[data-kept-none]"))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(60_000));
    }

    /** Asks anew where the record ends, as each page does when it is opened. */
    private static void ask(Page page) {
        page.navigate(shop.at("/"));
        page.evaluate("async () => { await self.faylineKept.head(); }");
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.getFileName().toString().contains(".db")).toList();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        for (Path old : files(to)) {
            Files.delete(old);
        }
        files(from).forEach(f -> {
            try {
                Files.copy(f, to.resolve(f.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    @Test
    void should_judge_on_the_phone_as_the_engine_does_whether_a_tree_goes_on_from_an_earlier_one() {
        HashTree tree = new HashTree();
        List<Object> cases = new ArrayList<>();
        for (int size = 1; size <= 33; size++) {
            tree.add(new byte[] {(byte) size});
            for (int seen = 1; seen <= size; seen++) {
                cases.add(List.of(
                        seen,
                        tree.root(seen).hex(),
                        size,
                        tree.root().hex(),
                        tree.consistency(seen, size).stream().map(Digest::hex).toList()));
            }
        }
        Page page = shop.phone();
        page.navigate(shop.at("/kept"));
        // each right one holds; with another root seen, another root now, or a hash of the path missing or changed none
        // does
        String judged = String.valueOf(page.evaluate("""
                async (cases) => {
                  const holds = (seen, was, size, root, path) => self.faylineKept.goesOn({ size: seen, root: was }, { size, root, path });
                  const other = (hex) => (hex[0] === "0" ? "1" : "0") + hex.slice(1);
                  let right = 0, wrong = 0, tried = 0;
                  for (const [seen, was, size, root, path] of cases) {
                    if (await holds(seen, was, size, root, path)) right += 1;
                    const bad = [[other(was), root, path], [was, other(root), path]];
                    if (path.length > 0) bad.push([was, root, path.slice(1)], [was, root, path.slice(0, -1)]);
                    path.forEach((h, i) => bad.push([was, root, path.map((p, k) => (k === i ? other(p) : p))]));
                    for (const [w, r, p] of bad) { tried += 1; if (await holds(seen, w, size, r, p)) wrong += 1; }
                  }
                  return `${right} ${wrong} ${tried > 2 * cases.length}`;
                }""", cases));
        assertThat(judged).isEqualTo(cases.size() + " 0 true");
    }

    @Test
    void should_tell_that_the_record_was_rewritten_when_it_goes_on_from_an_older_state() throws Exception {
        Page page = shop.phone();
        page.setDefaultTimeout(60_000);
        shop.as(page, "Ilse");
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        note(page, "Before.");
        ask(page);
        shop.kill();
        Path kept = Files.createTempDirectory("fayline-kept");
        assertThat(files(shop.data())).isNotEmpty();
        copy(shop.data(), kept);
        shop.start();
        note(page, "Seen by this phone.");
        ask(page);
        assertThat(page.locator("[data-broken-line]")).isHidden();

        shop.kill();
        copy(kept, shop.data());
        shop.start();
        Page other = shop.desk();
        shop.as(other, "Ned");
        note(other, "Otherwise, one.");
        note(other, "Otherwise, two.");
        ask(page);
        assertThat(page.locator("[data-broken-line]")).isVisible();
        assertThat(page.locator("[data-broken-line]")).containsText("The record was changed behind.");
        ask(other);
        assertThat(other.locator("[data-broken-line]")).isHidden();
    }
}
