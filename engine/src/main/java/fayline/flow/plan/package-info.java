/**
 * Work and plan as values, whole in themselves: everything a planner needs and an auditor judges, with nothing of the
 * definition behind it. Start at {@link fayline.flow.plan.Work} and {@link fayline.flow.plan.Plan}. Choosing and judging do
 * not belong here.
 *
 * <h2>What exactly is meant</h2>
 *
 * Whoever makes or judges a plan reads it so:
 *
 * <ol>
 *   <li><b>Time.</b> Instants on whole minutes; spans are minutes. Every stretch is half open: its end is not part of it, so
 *       one may end where the next begins.
 *   <li><b>Clocks.</b> A span on a {@link fayline.flow.plan.CureClock} is equivalent minutes at the clock's reference
 *       temperature: the sum of rate x minutes from the moment the span counts from. A span is over at the first whole minute
 *       at which that sum reaches it (to one part in a million); a window is shut after the last whole minute at which the sum
 *       does not exceed it. A span without a clock is minutes of time.
 *   <li><b>Hands.</b> The crew is one of the sizes listed in {@link fayline.flow.plan.WorkStep#hands}, the same people from
 *       first to last. {@code start} is the start of the first stretch, {@code handsEnd} the end of the last, and the stretches
 *       together last exactly the listed minutes plus, for each missed window, {@code ceil(personMinutes / crew)}. A step
 *       without hands has no people and no stretches, and {@code handsEnd == start}.
 *   <li><b>Second hands.</b> Of a pair in {@link fayline.flow.plan.OppositeHands#follows} the step not begun has a link to the
 *       other. Of those who do the other, as far as they are people of the work, as many do it too as the pair's crew says.
 *       With nobody left of them anybody may do it.
 *   <li><b>Sets.</b> A plan is a plan of one of {@link fayline.flow.plan.Work#divisions}. In it each piece of a group is in
 *       exactly one set. A set has no more pieces than the group's {@code most}, than one pot is for, and than each of its
 *       places holds; no fewer than {@code least}, but for what is left over where whole sets do not come out. A set of
 *       which a step has begun is not judged for its size.
 *   <li><b>Interruption.</b> Work that may not be interrupted, wet or not, is one stretch; it runs through breaks, but its
 *       whole crew is in the shop throughout (stretches of presence that touch count as one). Interruptible work may stop and
 *       go on at any time; its hands are neither in a break nor outside the presence of anyone in its crew.
 *   <li><b>Alone.</b> {@code end} is the first whole minute at which {@code alone}, counted from {@code handsEnd}, is over;
 *       without such a span {@code end == handsEnd}. It is neither earlier nor later.
 *   <li><b>Links.</b> A span of a link counts from the {@code start}, {@code handsEnd} ({@code hands-end}) or {@code end} of
 *       the earlier step in the plan. The later step starts no earlier than that moment, no earlier than {@code opens} is over,
 *       and, where the window shuts, no later than the last minute before. A window with a price may be missed: then the
 *       earlier step's id stands in {@code missed}, once; nothing else does. A window without a price is never missed. At most
 *       one priced link of a step leads to the same earlier step. A step whose earlier step is unplanned is unplanned.
 *   <li><b>Holds.</b> A hold takes {@code count} of its candidates, the same for all its steps, from the earliest start to the
 *       latest end of its steps, nights included. If a step of it is unplanned, it is taken for ever from its first start on.
 *       Two holds never have a place in common at the same moment, nor two holds that share a step. {@code places} of a planned
 *       step are those of all holds that span it, and no others. Two holds that both had begun in the shop before {@code now}
 *       are not judged against each other.
 *   <li><b>Stands.</b> A wet step needs a stand that allows wet work, a dusty one a stand that allows dust. In the room of a
 *       stand, dusty hands end at least {@code dustSettlesMin} before wet hands start, and do not begin before wet hands end.
 *       Steps that hold no stand are in no room.
 *   <li><b>In the shop.</b> Someone, on a break or not, is present at {@code handsEnd + watchMin} for each watch. While the
 *       hands of an accompanied step work, at least two people are present at every moment, the crew included.
 *   <li><b>Earliest start.</b> A step not begun starts no earlier than {@code now}, its {@code notBefore} and the expected day
 *       of each delivery it awaits.
 *   <li><b>What happened.</b> Done and running steps stand in the plan with what {@code actual} says: times, people, places as
 *       far as they are known. They are not judged against hours, skills, windows or prices, only against those not begun: their
 *       hands, from {@code now} on, keep their people busy, and their places stay taken.
 *   <li><b>Running, hands left.</b> {@code end} as under <i>Alone</i>; where that lies before {@code now}, any moment from then
 *       to {@code now}. An {@code ended} in {@code actual} is binding.
 *   <li><b>Running, hands at it.</b> {@code handsEnd} is not before {@code now}, and the stretches, the first of which starts at
 *       {@code started}, last at least the minutes listed for its crew (for an unlisted size: the next smaller listed one, or
 *       the least). What may not be interrupted goes on to its end whatever the hours; of what may, the stretches after
 *       {@code now} keep to hours and breaks.
 *   <li><b>Wishes.</b> A {@link fayline.flow.plan.WorkWish} binds a step not begun: whom it is to be done <i>with</i> is in its
 *       crew, whom it is to be done <i>without</i> is not; its places have that <i>at</i> which it is wished and not that from which
 *       it is wished <i>away</i>; it starts no earlier than {@code from} and earlier than {@code before}. A wish whose
 *       {@code before} is not after {@code now} is past and binds nobody. What cannot be kept leaves its step unplanned.
 *   <li><b>Unplanned.</b> Every step is either planned, once, or unplanned with a reason. Only steps not begun may be
 *       unplanned. {@code finish} is the latest {@code end} of all planned steps, empty when there is none.
 * </ol>
 */
@NullMarked
package fayline.flow.plan;

import org.jspecify.annotations.NullMarked;
