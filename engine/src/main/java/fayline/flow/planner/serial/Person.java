package fayline.flow.planner.serial;

import fayline.flow.plan.Worker;

/** One person's hours, and what already takes them. */
final class Person {
    final int index;
    final Worker worker;
    final Lane busy = new Lane();
    /** Minutes of work given so far: work goes to who has least. */
    int load;
    /** How many steps the lead wants the person for. */
    int wanted;

    private final Stretches present;
    private final Stretches working;

    Person(int index, Worker worker, Hours hours) {
        this.index = index;
        this.worker = worker;
        present = hours.present();
        working = hours.working();
    }

    /** Present hours, or those of them that are no break. */
    private Stretches hours(boolean interruptible) {
        return interruptible ? working : present;
    }

    /** Till when the person is free from t on; t itself if not at all. */
    int freeUntil(int t, boolean interruptible) {
        int end = hours(interruptible).endAt(t);
        if (end <= t || busy.clearFrom(t) != t) {
            return t;
        }
        return Math.min(end, busy.nextFrom(t));
    }

    boolean isBusyAt(int t) {
        return busy.clearFrom(t) != t;
    }

    /** The start of the first free time after t that t does not lie in. */
    int nextFree(int t, boolean interruptible) {
        Stretches hours = hours(interruptible);
        int s = Math.max(t + 1, freeUntil(t, interruptible));
        while (s < TimeLine.FOREVER) {
            int in = hours.nextIn(s);
            int clear = in >= TimeLine.FOREVER ? in : busy.clearFrom(in);
            if (clear == in) {
                return in;
            }
            s = clear;
        }
        return TimeLine.FOREVER;
    }

    /** Till when the person works without break from t on, other steps aside; t if not at all. */
    int worksUntil(int t) {
        return Math.max(t, working.endAt(t));
    }

    int nextWorking(int t) {
        return working.nextIn(t);
    }

    /** Till when the person is present from t on, t if not. */
    int presentUntil(int t) {
        return Math.max(t, present.endAt(t));
    }

    int nextPresent(int t) {
        return present.nextIn(t);
    }

    int longestPresence() {
        return present.longest();
    }
}
