/**
 * Judges a schedule of a net, whoever made it, from the definition alone. Start at {@link fayline.flow.audit.net.NetAuditor}.
 * What makes schedules does not belong here and is not seen from here.
 */
@NullMarked
package fayline.flow.audit.net;

import org.jspecify.annotations.NullMarked;
