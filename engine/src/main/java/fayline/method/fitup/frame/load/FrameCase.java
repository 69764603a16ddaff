package fayline.method.fitup.frame.load;

import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.NodeFreedom;
import java.util.List;

/**
 * The question how a frame on supports moves under loads.
 *
 * @param frame the frame
 * @param supports what is held
 * @param loads what acts
 */
public record FrameCase(Frame frame, List<NodeFreedom> supports, List<FrameLoad> loads) {
    /** Copies the lists. */
    public FrameCase {
        supports = List.copyOf(supports);
        loads = List.copyOf(loads);
    }
}
