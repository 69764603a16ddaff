package fayline.flow.result.hours;

import fayline.flow.project.local.LocalTask;
import java.util.OptionalDouble;

/**
 * The builder's share of one task of the list.
 *
 * @param task the task
 * @param ownMin minutes of people who count as builders
 * @param paidMin minutes of paid people
 */
public record TaskShare(LocalTask task, double ownMin, double paidMin) {
    /** The share of what was not bought that builders made, by their time, from 0 to 1; empty while nobody worked on it. */
    public OptionalDouble share() {
        double all = ownMin + paidMin;
        return all <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(ownMin / all * (1 - task.bought().ratio()));
    }
}
