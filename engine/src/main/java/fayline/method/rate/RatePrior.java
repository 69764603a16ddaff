package fayline.method.rate;

/**
 * What is expected of rates before the shop has times of its own: that the recipe is right, everybody works alike and
 * repetition brings nothing. All numbers are common practice, no source.
 *
 * @param kind as how many pieces of work at the recipe's rate that counts for a kind of work; positive
 * @param person as how many for each person; positive
 * @param repetition as how many doublings without any gain for the learning curve; positive
 * @param scatter expected standard deviation of the logarithm of booked over estimated time, within a kind of work
 * @param scatterWeight as how many pieces of work that expectation counts; positive
 * @param least ratio below which a time is taken for a slip of the pen
 * @param most ratio above which a time is taken for a card that was finished too late
 */
public record RatePrior(
        double kind,
        double person,
        double repetition,
        double scatter,
        double scatterWeight,
        double least,
        double most) {
    /** What the program assumes. */
    public static final RatePrior USUAL = new RatePrior(1, 4, 1, 0.3, 4, 0.2, 5);

    /** The learning curve's weight in squares of the logarithm of the count. */
    double repetitionPrecision() {
        return repetition * Math.log(2) * Math.log(2);
    }
}
