/**
 * What entries hold: values in their canonical form, pictures by their hashes, and something that happened with its corrections
 * laid over it. Start at {@link fayline.flow.record.payload.Value}; a room of the record folds each
 * {@link fayline.flow.record.payload.Happened} that is its own. Sources: RFC 8785 [rfc8785]. Entries themselves and their chain
 * stand above it and do not belong here.
 */
@NullMarked
package fayline.flow.record.payload;

import org.jspecify.annotations.NullMarked;
