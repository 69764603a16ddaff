package fayline.flow.result.step;

/**
 * A mould's release state now.
 *
 * @param mould the mould
 * @param pulls pulls so far
 * @param sinceTouchUp pulls since the last touch-up
 * @param sinceFull pulls since the last full release
 * @param touchUpDue whether a touch-up is due before the next lay-up
 * @param fullDue whether a full release is due before the next lay-up
 * @param next the part that comes off it next; empty where none is planned
 */
public record MouldUse(
        String mould, int pulls, int sinceTouchUp, int sinceFull, boolean touchUpDue, boolean fullDue, String next) {}
