/**
 * Questions to a plan without touching it: what if somebody is away, a mould more, another air, a late delivery, one more working
 * day, one more in the crew. Start at {@link fayline.flow.whatif.Change}. Planning itself is no concern of this package.
 */
@NullMarked
package fayline.flow.whatif;

import org.jspecify.annotations.NullMarked;
