package fayline.flow.record.payload;

/** A part of the record that folds the happenings of its own kinds by itself. Not safe for several threads. */
public interface Room {
    /** Takes a happening, or takes it anew after a correction. */
    void hold(Happened happened);

    /** A happening was withdrawn. */
    void drop(long seq);
}
