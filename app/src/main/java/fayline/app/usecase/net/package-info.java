/**
 * Nets of activities read from a folder of sets, and scheduled. Start at {@link fayline.app.usecase.net.NetShelf} and {@link
 * fayline.app.usecase.net.ScheduleNet}. What a shop's plan needs does not belong here.
 */
@NullMarked
package fayline.app.usecase.net;

import org.jspecify.annotations.NullMarked;
