package fayline.method.fitup.scheme;

import java.util.Optional;

/**
 * An uncertainty that nobody has given, so that no chance can be told.
 *
 * @param what what is missing, in the builder's words
 * @param about the stop or reading it is of
 * @param offer what could be assumed instead; empty where it must be measured
 */
public record Missing(String what, String about, Optional<Assumption> offer) {}
