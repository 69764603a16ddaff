package fayline.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** The command line as a whole: which commands there are, and what exit code each kind of failure has. */
public final class Program {
    private Program() {}

    /**
     * Runs one command.
     *
     * @param args the arguments
     * @param s console, clock and benches
     * @return the exit code, one of {@link ExitCode}
     */
    public static int run(String[] args, Surroundings s) {
        CommandLine line = new CommandLine(new RootCommand())
                .addSubcommand(new ServeCommand(s))
                .addSubcommand(new CardsCommand(s))
                .addSubcommand(new FitCommand(s))
                .addSubcommand(new VerifyCommand(s))
                .addSubcommand(new PlanCommand(s))
                .addSubcommand(new ForecastCommand(s))
                .addSubcommand(new CostCommand(s))
                .addSubcommand(new TraceCommand(s))
                .addSubcommand(new CalcCommand(s))
                .addSubcommand(new ImportCommand(s))
                .addSubcommand(new ExportCommand(s))
                .addSubcommand(new BookCommand(s))
                .addSubcommand(new BackupCommand(s))
                .addSubcommand(new RestoreCommand(s))
                .addSubcommand(new VerifyRecordCommand(s))
                .addSubcommand(new BenchCommand(s));
        line.registerConverter(Integer.class, new WholeNumber());
        line.registerConverter(int.class, new WholeNumber());
        line.setOut(new PrintWriter(s.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(s.err(), true, StandardCharsets.UTF_8));
        Failures failures = new Failures(s);
        line.setExecutionExceptionHandler(failures);
        line.setParameterExceptionHandler(failures);
        try {
            return line.execute(args);
        } catch (UnsatisfiedLinkError e) {
            s.err().println("fayline: the solver's library cannot be loaded on this machine: " + e.getMessage());
            return ExitCode.FAULT;
        }
    }

    private static final class WholeNumber implements CommandLine.ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            try {
                return Integer.valueOf(text);
            } catch (NumberFormatException e) {
                throw new CommandLine.TypeConversionException("found \"" + text + "\", expected a whole number");
            }
        }
    }
}
