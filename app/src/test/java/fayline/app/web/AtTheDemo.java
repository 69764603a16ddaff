package fayline.app.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that share one demonstration for their class, each with a browser of its own: what one test sends, the next one sees. */
abstract class AtTheDemo {
    @TempDir
    static Path folder;

    static ServedDemo demo;

    Browser browser;

    @BeforeAll
    static void open() throws Exception {
        demo = ServedDemo.in(folder);
    }

    @AfterAll
    static void close() {
        demo.close();
    }

    @BeforeEach
    void visit() {
        browser = new Browser(demo.server());
    }
}
