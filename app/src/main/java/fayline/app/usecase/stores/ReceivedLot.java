package fayline.app.usecase.stores;

/**
 * What somebody typed of a lot that came. All texts as typed.
 *
 * @param lot its number
 * @param of the material or system
 * @param component {@code resin} or {@code hardener} of a system; empty otherwise
 * @param quantity how much came
 * @param weighed whether that was weighed or measured; otherwise it is what the label says
 * @param received the day it came
 * @param expires the date on it; may be empty
 * @param openedLife how long it keeps once opened; may be empty
 * @param price what it cost, as {@code 17.80 per kg}; may be empty
 * @param order the delivery or order it came by; may be empty
 */
public record ReceivedLot(
        String lot,
        String of,
        String component,
        String quantity,
        boolean weighed,
        String received,
        String expires,
        String openedLife,
        String price,
        String order) {}
