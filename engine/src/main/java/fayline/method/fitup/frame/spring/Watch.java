package fayline.method.fitup.frame.spring;

import fayline.method.fitup.frame.NodeFreedom;

/**
 * A place whose shift after release is asked: a hinge point, the edge beside a neighbour.
 *
 * @param id its name
 * @param at where and which way
 */
public record Watch(String id, NodeFreedom at) {
    /** A place without a name of its own. */
    public static Watch at(NodeFreedom at) {
        return new Watch(at.words(), at);
    }
}
