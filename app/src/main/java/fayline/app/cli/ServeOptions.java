package fayline.app.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;

/**
 * What {@code serve} is asked.
 *
 * @param data the shop's data folder
 * @param demo whether the demonstration is read in where the folder holds no project
 * @param port the port; empty for the usual one
 * @param now the moment at which the shop's clock begins, once the shop's zone is known; empty for the usual one
 * @param browser whether a browser is opened where there is one
 * @param lan how the shop's network is let in; empty for this machine alone
 * @param train whether to serve a few pages to itself and end, so that a faster start can be prepared
 */
public record ServeOptions(
        Path data,
        boolean demo,
        Optional<Integer> port,
        Optional<Function<ZoneId, Instant>> now,
        boolean browser,
        Optional<LanOptions> lan,
        boolean train) {}
