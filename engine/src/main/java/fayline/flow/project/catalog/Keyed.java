package fayline.flow.project.catalog;

/** Something with an id that is unique among its kind; ids are ASCII. */
public interface Keyed {
    /** The id, as files and addresses name it. */
    String id();
}
