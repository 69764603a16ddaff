/**
 * Serial schedule generation by chains, the inside of the serial planner. Start at {@link
 * fayline.flow.planner.serial.ChainSchedule}; {@link fayline.flow.planner.serial.BlockPlacer} is the heart of it. Times are
 * whole minutes of a {@link fayline.flow.planner.serial.TimeLine}; steps, people, places and holds go by index.
 */
@NullMarked
package fayline.flow.planner.serial;

import org.jspecify.annotations.NullMarked;
