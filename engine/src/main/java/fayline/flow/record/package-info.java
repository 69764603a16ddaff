/**
 * What happened, kept: entries in one order, each carrying the hash of the one before, and the state that follows from them.
 * Start at {@link fayline.flow.record.Entry} for one entry, {@link fayline.flow.record.Chain} for the check of many, and
 * {@link fayline.flow.record.RecordState} for what they amount to. The written form is described in
 * {@code docs/record-format/README.md}. Databases do not belong here: a store stands behind
 * {@link fayline.flow.record.EntryLog}.
 */
@NullMarked
package fayline.flow.record;

import org.jspecify.annotations.NullMarked;
