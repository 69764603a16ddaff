package fayline.flow.project.design;

import fayline.flow.project.catalog.Keyed;
import java.util.List;
import java.util.Map;

/** Something that recipes make: a part or a joint. */
public interface Made extends Keyed {
    /** The name. */
    String name();

    /** The assembly it belongs to. */
    String in();

    /** The recipes that make it, in order. */
    List<Make> make();

    /** Measures that rates are counted by; SI or plain counts. */
    Map<String, Double> sizes();
}
