package fayline.flow.planner.serial;

import java.util.List;

/**
 * Where one task lies: minutes of the {@link TimeLine}, people and places by index.
 *
 * @param task the task
 * @param start when the hands begin
 * @param handsEnd when they leave
 * @param end when the unattended time is over
 * @param people who
 * @param stretches when the hands work, as pairs
 * @param chosen for each hold of the task, in the task's order, its places
 * @param missed tasks whose windows are missed
 * @param price person-minutes of all missed windows
 */
record Placement(
        int task,
        int start,
        int handsEnd,
        int end,
        List<Integer> people,
        List<int[]> stretches,
        List<List<Integer>> chosen,
        List<Integer> missed,
        int price) {}
