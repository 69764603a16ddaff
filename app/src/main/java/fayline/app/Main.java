package fayline.app;

import fayline.app.bench.BenchRun;
import fayline.app.cli.BenchOptions;
import fayline.app.cli.Program;
import fayline.app.cli.ServeOptions;
import fayline.app.cli.Surroundings;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;

/**
 * The program. Everything outside the engine that a command needs (console, clock, benches, pages) is handed over here. A
 * class of the pages or of the database is named only inside the method that starts it, so that the command line loads none.
 */
public final class Main {
    private Main() {}

    /** Runs the command line; ends with its exit code, unless a server stays. */
    public static void main(String[] args) {
        // the logging's own remarks about its start are no concern of a user
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        PrintStream out = console(FileDescriptor.out);
        PrintStream err = console(FileDescriptor.err);
        Surroundings surroundings = new Surroundings(System.in, out, err, Clock.systemUTC(), Main::bench, Main::serve);
        int code = Program.run(withCommand(args), surroundings);
        out.flush();
        err.flush();
        if (code != 0) {
            System.exit(code);
        }
    }

    /** Without a command the demonstration is served. */
    static String[] withCommand(String[] args) {
        if (args.length == 0) {
            return new String[] {"serve", "--demo"};
        }
        return args[0].equals("--train") ? new String[] {"serve", "--demo", "--train"} : args;
    }

    private static int serve(ServeOptions options, Surroundings surroundings) {
        return new Serving(options, surroundings).run();
    }

    private static int bench(BenchOptions options, PrintStream out, PrintStream err) {
        return new BenchRun(out, err)
                .run(
                        options.topic(),
                        options.folder(),
                        options.only(),
                        options.seconds(),
                        options.phones(),
                        options.json());
    }

    private static PrintStream console(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }
}
