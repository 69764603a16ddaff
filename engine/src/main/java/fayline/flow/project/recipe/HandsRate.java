package fayline.flow.project.recipe;

import fayline.basis.finding.Figure.Origin;

/**
 * A rate: person-minutes per unit of a driver.
 *
 * @param minutes person-minutes per unit
 * @param per the driver: {@code step}, {@code m2}, {@code ply}, {@code ply-m2}, {@code m} (edge), {@code corner},
 *     {@code batch}, {@code pleat}, {@code tape-m}, {@code core-m2}, {@code joint-m}, {@code joint-m2}, {@code coat-m2}, or
 *     the name of a size that the part states
 * @param times a multiplier as a number or {@code with.NAME}; usually 1
 * @param origin where the rate comes from
 */
public record HandsRate(double minutes, String per, String times, Origin origin) {}
