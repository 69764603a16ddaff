package fayline.method.vacuum;

import fayline.basis.units.Pressure;
import fayline.basis.units.Volume;
import java.util.Optional;

/**
 * The question how long a pump takes and how far it gets.
 *
 * @param volume free volume of bag and hoses, where the time is asked
 * @param pumpM3PerS pumping speed in m3/s, taken as constant; above zero
 * @param from absolute pressure at the start
 * @param to absolute pressure wanted, where the time is asked
 * @param leakPaM3PerS leak in Pa m3/s, zero for a tight bag
 */
public record PumpDown(
        Optional<Volume> volume, double pumpM3PerS, Pressure from, Optional<Pressure> to, double leakPaM3PerS) {}
