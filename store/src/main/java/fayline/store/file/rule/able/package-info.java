/**
 * What a shop can do at all on a day: lots in date, a crew for each step, a day long enough, an hour within each window. Start
 * at {@link fayline.store.file.rule.able.Feasible}. Whether a definition holds together does not belong here.
 */
@NullMarked
package fayline.store.file.rule.able;

import org.jspecify.annotations.NullMarked;
