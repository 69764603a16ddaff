/**
 * Questions to a plan without touching it: what if somebody is away, a mould more, another air, a late delivery, one more working
 * day, one more in the crew; and for work too long for a day, what it costs split, helped or moved to a longer day. Start at
 * {@link fayline.flow.whatif.Change} and {@link fayline.flow.whatif.LongWork}.
 */
@NullMarked
package fayline.flow.whatif;

import org.jspecify.annotations.NullMarked;
