/**
 * Benches: what measures the program or compares it with case files. Start at {@link fayline.app.bench.BenchRun}. What does not
 * belong here: formulas; a case goes through the same topics that {@code fayline calc} uses.
 */
@NullMarked
package fayline.app.bench;

import org.jspecify.annotations.NullMarked;
