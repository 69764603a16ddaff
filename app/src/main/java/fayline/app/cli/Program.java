package fayline.app.cli;

import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.open.CannotOpenException;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
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
                .addSubcommand(new CalcCommand(s))
                .addSubcommand(new ImportCommand(s))
                .addSubcommand(new ExportCommand(s))
                .addSubcommand(new VerifyRecordCommand(s))
                .addSubcommand(new BenchCommand(s));
        line.registerConverter(Integer.class, Program::whole);
        line.registerConverter(int.class, Program::whole);
        line.setOut(new PrintWriter(s.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(s.err(), true, StandardCharsets.UTF_8));
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, command, s));
        line.setParameterExceptionHandler((e, a) -> misread(e));
        try {
            return line.execute(args);
        } catch (UnsatisfiedLinkError e) {
            s.err().println("fayline: the solver's library cannot be loaded on this machine: " + e.getMessage());
            return ExitCode.FAULT;
        }
    }

    private static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new CommandLine.TypeConversionException("found \"" + text + "\", expected a whole number");
        }
    }

    private static int failed(Exception e, CommandLine command, Surroundings s) {
        String name = command.getCommandSpec().qualifiedName();
        if (e instanceof UnreadableDefinitionException unreadable) {
            unreadable.problems().forEach(p -> s.err().println(p.sentence()));
        }
        if (isBadInput(e)) {
            s.err().println(name + ": " + told(e));
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof CannotOpenException) {
            s.err().println(name + ": " + e.getMessage());
            return ExitCode.FAULT;
        }
        s.err().println(name + ": this is a fault of the program or the machine, not of what was given:");
        e.printStackTrace(s.err());
        return ExitCode.FAULT;
    }

    private static boolean isBadInput(Exception e) {
        return e instanceof CalcInputException
                || e instanceof BadInputException
                || e instanceof UnreadableDefinitionException
                || e instanceof NoSuchFileException
                || e instanceof NotDirectoryException
                || e instanceof CommandLine.TypeConversionException;
    }

    private static String told(Exception e) {
        if (e instanceof NoSuchFileException || e instanceof NotDirectoryException) {
            return "found no folder " + e.getMessage() + ", expected one that is there";
        }
        return String.valueOf(e.getMessage());
    }

    private static int misread(CommandLine.ParameterException e) {
        CommandLine command = e.getCommandLine();
        command.getErr().println(command.getCommandSpec().qualifiedName() + ": " + e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, command.getErr());
        command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }
}
