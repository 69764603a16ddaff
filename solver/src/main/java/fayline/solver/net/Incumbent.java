package fayline.solver.net;

/** The best schedule so far and the best bound, shared by whoever searches. */
final class Incumbent {
    private final Compact net;
    private int[] start = {};
    private int end = Integer.MAX_VALUE;
    private int bound;
    private boolean infeasible;

    Incumbent(Compact net, int bound) {
        this.net = net;
        this.bound = bound;
    }

    /** Takes a schedule that keeps everything, if it is better; whether it was. */
    synchronized boolean offer(int[] schedule) {
        int then = net.makespan(schedule);
        if (then >= end) {
            return false;
        }
        start = schedule.clone();
        end = then;
        return true;
    }

    /** No schedule is shorter. */
    synchronized void raise(int to) {
        bound = Math.max(bound, to);
    }

    /** There is no schedule. */
    synchronized void none() {
        infeasible = true;
    }

    /** Whether there is nothing left to find. */
    synchronized boolean closed() {
        return infeasible || end <= bound;
    }

    synchronized boolean found() {
        return end < Integer.MAX_VALUE;
    }

    synchronized boolean infeasible() {
        return infeasible;
    }

    synchronized int[] start() {
        return start.clone();
    }

    /** The best schedule with its end and the bound, of one and the same moment. */
    synchronized Standing standing() {
        return new Standing(start.clone(), end, bound);
    }

    /** How a search stands; a class and not a record, for it holds an array. */
    static final class Standing {
        final int[] start;
        final int end;
        final int bound;

        private Standing(int[] start, int end, int bound) {
            this.start = start;
            this.end = end;
            this.bound = bound;
        }

        boolean found() {
            return end < Integer.MAX_VALUE;
        }
    }

    /** The best makespan; the largest number where there is none. */
    synchronized int end() {
        return end;
    }

    synchronized int bound() {
        return bound;
    }
}
