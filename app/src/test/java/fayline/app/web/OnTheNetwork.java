package fayline.app.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that share one demonstration on the shop's network for their class; each begins with nobody let in. */
abstract class OnTheNetwork {
    @TempDir
    static Path folder;

    static ServedNetwork served;

    @BeforeAll
    static void serve() throws Exception {
        served = ServedNetwork.in(folder);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @BeforeEach
    void empty() {
        served.empty();
    }
}
