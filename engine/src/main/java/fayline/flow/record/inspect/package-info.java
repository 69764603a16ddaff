/**
 * Visits of inspectors and what they found: each finding with how it was put right and who signed that. Start at
 * {@link fayline.flow.record.inspect.InspectState}; {@link fayline.flow.record.inspect.InspectFold} is how entries become it. A
 * signature here is a name in the shop's own record.
 */
@NullMarked
package fayline.flow.record.inspect;

import org.jspecify.annotations.NullMarked;
