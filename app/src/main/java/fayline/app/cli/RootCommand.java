package fayline.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code fayline} alone: says that a command is missing. */
@Command(
        name = "fayline",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Version.class,
        description = "Plans, computes, guides and records the hand building of a one-off composite aircraft.",
        footer = {"", "Exit codes: 0 done, 1 the work says no, 2 bad input, 3 a fault of the program or the machine."})
final class RootCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "a command is missing");
    }

    /** Reads the version that the build wrote into the jar. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"fayline " + version()};
        }
    }

    static String version() {
        String version = RootCommand.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }
}
