package fayline.app.cli;

import fayline.app.usecase.calc.CalcInputException;
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
                .addSubcommand(new CalcCommand(s))
                .addSubcommand(new BenchCommand(s));
        line.setOut(new PrintWriter(s.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(s.err(), true, StandardCharsets.UTF_8));
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, command, s));
        line.setParameterExceptionHandler((e, a) -> misread(e));
        return line.execute(args);
    }

    private static int failed(Exception e, CommandLine command, Surroundings s) {
        String name = command.getCommandSpec().qualifiedName();
        if (e instanceof CalcInputException) {
            s.err().println(name + ": " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        s.err().println(name + ": this is a fault of the program or the machine, not of what was given:");
        e.printStackTrace(s.err());
        return ExitCode.FAULT;
    }

    private static int misread(CommandLine.ParameterException e) {
        CommandLine command = e.getCommandLine();
        command.getErr().println(command.getCommandSpec().qualifiedName() + ": " + e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, command.getErr());
        command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }
}
