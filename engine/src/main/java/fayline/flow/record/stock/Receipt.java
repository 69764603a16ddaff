package fayline.flow.record.stock;

import java.time.Instant;

/**
 * A lot that came into the stores. Texts are as typed.
 *
 * @param seq its entry
 * @param at when
 * @param by who entered it
 * @param lot its number
 * @param of the material or system
 * @param component {@code resin} or {@code hardener} of a system; empty otherwise
 * @param quantity how much came, with its unit
 * @param weighed whether that was weighed or measured when it came; otherwise it is what the label says
 * @param received the day it came, as {@code 2026-03-02}
 * @param expires the date on it; empty where there is none
 * @param openedLife how long it keeps once opened; may be empty
 * @param price what it cost, as {@code 17.80 per kg}; may be empty
 * @param certificate hash of the certificate's file; empty where there is none
 * @param order the order it came by; may be empty
 */
public record Receipt(
        long seq,
        Instant at,
        String by,
        String lot,
        String of,
        String component,
        String quantity,
        boolean weighed,
        String received,
        String expires,
        String openedLife,
        String price,
        String certificate,
        String order) {}
