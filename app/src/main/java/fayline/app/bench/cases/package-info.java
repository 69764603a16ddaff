/**
 * Check cases: layouts, subjects, comparison. Start at {@link fayline.app.bench.cases.CheckFolder}. A file's form tells its
 * layout; a {@link fayline.app.bench.cases.Subject} is chosen by the file and by which quantities are given and asked. The
 * side that reckons gets a {@link fayline.app.bench.cases.Question}, which holds no expected value.
 */
@NullMarked
package fayline.app.bench.cases;

import org.jspecify.annotations.NullMarked;
