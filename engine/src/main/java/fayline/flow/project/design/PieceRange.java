package fayline.flow.project.design;

/**
 * Which pieces a part is that was made of one that states pieces.
 *
 * @param of the part as the definition states it, for one piece
 * @param from number of the first piece
 * @param to number of the last, included
 * @param number which set it is, from 1
 * @param sets how many there are
 */
public record PieceRange(Part of, int from, int to, int number, int sets) {
    /** How many pieces. */
    public int size() {
        return to - from + 1;
    }
}
