package fayline.method.bag;

import fayline.basis.units.Area;
import fayline.basis.units.Length;

/**
 * The question how much of a sheet covers a shape with a margin all round.
 *
 * @param shape the shape, in plan
 * @param margin margin on each side; not negative
 * @param surfaceFactor true surface over plan area, from the drawing or a string measurement; 1 for a flat part
 */
public record Cover(Shape shape, Length margin, double surfaceFactor) {
    /** A shape in plan. */
    public sealed interface Shape permits Rectangle, Convex {}

    /**
     * A rectangle; its margin has square corners.
     *
     * @param length length
     * @param width width
     */
    public record Rectangle(Length length, Length width) implements Shape {}

    /**
     * A smooth convex outline; its margin has round corners.
     *
     * @param area its area
     * @param perimeter its perimeter
     */
    public record Convex(Area area, Length perimeter) implements Shape {}
}
