package fayline.method.fitup.frame.load;

import fayline.method.fitup.frame.NodeFreedom;

/**
 * A force or moment at a node.
 *
 * @param at where and which way
 * @param value N, or N mm for a turn
 */
public record FrameLoad(NodeFreedom at, double value) {}
