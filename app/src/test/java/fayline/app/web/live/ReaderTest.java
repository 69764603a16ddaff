package fayline.app.web.live;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** One stream, to a connection that takes as much as a test says. */
class ReaderTest {
    private static final class Line extends ServletOutputStream {
        private final ByteArrayOutputStream taken = new ByteArrayOutputStream();
        private int takes;
        private boolean broken;

        @Override
        public boolean isReady() {
            return takes > 0;
        }

        @Override
        public void setWriteListener(WriteListener listener) {
            assertThat(listener).isNotNull();
        }

        @Override
        public void write(int b) {
            taken.write(b);
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            if (broken) {
                throw new IOException("broken");
            }
            takes--;
            taken.write(bytes);
        }

        @Override
        public void flush() {
            takes--;
        }

        String text() {
            return taken.toString(StandardCharsets.UTF_8);
        }
    }

    private final Line line = new Line();
    private final Reader reader = Reader.of("one", () -> true, line);

    @Test
    void should_write_only_what_the_reader_takes_and_keep_the_newest_alone() {
        reader.tell("head", "1");
        assertThat(line.text()).isEmpty();
        line.takes = 2;
        reader.onWritePossible();
        assertThat(line.text()).isEqualTo("retry: 2000\n\nevent: head\ndata: 1\n\n");
        line.takes = 0;
        reader.tell("head", "2");
        reader.tell("head", "3");
        line.takes = 2;
        reader.onWritePossible();
        assertThat(line.text()).endsWith("data: 1\n\nevent: head\ndata: 3\n\n");
        assertThat(reader.knows("3")).isTrue();
        assertThat(reader.knows("2")).isFalse();
    }

    @Test
    void should_count_as_slow_only_while_something_waits_for_the_reader() {
        line.takes = 2;
        reader.onWritePossible();
        reader.tell("head", "1");
        assertThat(reader.isSlow(Duration.ZERO)).isTrue();
        assertThat(reader.isSlow(Duration.ofDays(1))).isFalse();
        line.takes = 9;
        reader.onWritePossible();
        assertThat(reader.isSlow(Duration.ZERO)).isFalse();
    }

    @Test
    void should_end_when_the_reader_has_gone_or_all_is_said() {
        line.takes = 1;
        line.broken = true;
        reader.onWritePossible();
        assertThat(reader.ended()).isDone();
        Line other = new Line();
        Reader last = Reader.of("one", () -> true, other);
        last.tell("enough", "");
        last.endWhenTold();
        assertThat(last.ended()).isNotDone();
        other.takes = 3;
        last.onWritePossible();
        assertThat(other.text()).endsWith("event: enough\ndata: \n\n");
        assertThat(last.ended()).isDone();
    }
}
