package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A search for a better plan from the command line, on the demonstration. */
class BetterPlanCommandTest {
    private static String demo() {
        Path here = Path.of("").toAbsolutePath();
        return here.resolve(Files.exists(here.resolve("demo")) ? "." : "..")
                .resolve("demo/ousel")
                .normalize()
                .toString();
    }

    @Test
    void should_print_a_better_plan_that_the_auditor_finds_clean_and_say_how_it_came_about() {
        Shell shell = new Shell();
        assertThat(shell.run("", "plan", demo(), "--better", "1", "--json"))
                .as(shell.err)
                .isZero();
        assertThat(shell.err)
                .contains("Best of a search to its limit (effort 1, seed 1); the same again gives the same plan.")
                .contains("was ");
        Shell auditor = new Shell();
        assertThat(auditor.run(shell.out, "calc", "plan.audit"))
                .as(auditor.out + auditor.err)
                .isZero();
    }

    @Test
    void should_say_that_the_clock_stopped_a_search() {
        Shell shell = new Shell();
        assertThat(shell.run("", "plan", demo(), "--better", "3600", "--stop-after", "2"))
                .as(shell.err)
                .isZero();
        assertThat(shell.err).contains("the clock stopped (effort 3600, seed 1); the same again need not give it.");
    }

    @Test
    void should_refuse_an_effort_without_measure() {
        Shell shell = new Shell();
        assertThat(shell.run("", "plan", demo(), "--better", "0")).isEqualTo(2);
        assertThat(shell.err).contains("found --better 0, expected an effort from 1 to 3600");
    }

    @Test
    void should_refuse_to_stop_a_search_before_it_begins() {
        Shell shell = new Shell();
        assertThat(shell.run("", "plan", demo(), "--better", "1", "--stop-after", "0"))
                .isEqualTo(2);
        assertThat(shell.err).contains("found --stop-after 0, expected seconds from 1 on");
    }
}
