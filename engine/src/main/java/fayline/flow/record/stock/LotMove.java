package fayline.flow.record.stock;

import java.time.Instant;

/**
 * A lot carried into the cold store or out of it.
 *
 * @param seq its entry
 * @param at when
 * @param by who
 * @param lot the lot
 * @param cold whether it went into the cold; otherwise into the room
 */
public record LotMove(long seq, Instant at, String by, String lot, boolean cold) {}
