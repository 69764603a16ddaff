/**
 * The command line. Start at {@link fayline.app.cli.Program}. Commands read options, call one use case and print; what each
 * exit code means is said once, in {@link fayline.app.cli.ExitCode}. What does not belong here: any reckoning.
 */
@NullMarked
package fayline.app.cli;

import org.jspecify.annotations.NullMarked;
