package fayline.app.cli;

import fayline.app.usecase.archive.UnreadableArchiveException;
import fayline.app.usecase.archive.UnsoundRecordException;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.open.CannotOpenException;
import fayline.app.usecase.shop.UnreadableDefinitionException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * What a command that fails says and which exit code it has. A class, no lambdas: the Java 17 that Debian 12 ships dies while it
 * archives a lambda of an interface as old as these, and the faster start with it.
 */
final class Failures implements IExecutionExceptionHandler, IParameterExceptionHandler {
    private final Surroundings s;

    Failures(Surroundings s) {
        this.s = s;
    }

    @Override
    public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
        String name = command.getCommandSpec().qualifiedName();
        if (e instanceof UnreadableDefinitionException unreadable) {
            unreadable.problems().forEach(p -> s.err().println(p.sentence()));
        }
        if (isBadInput(e)) {
            s.err().println(name + ": " + told(e));
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof UnsoundRecordException) {
            s.err().println(name + ": " + e.getMessage());
            return ExitCode.SAYS_NO;
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
                || e instanceof UnreadableArchiveException
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

    @Override
    public int handleParseException(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        command.getErr().println(command.getCommandSpec().qualifiedName() + ": " + e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, command.getErr());
        command.getErr().println("See " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }
}
