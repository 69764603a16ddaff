package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;

/**
 * An elliptical arc by its centre, from the end points that SVG gives (SVG 1.1 appendix F.6.5; radii too small are enlarged,
 * F.6.6).
 *
 * @param centre the centre
 * @param rx first radius
 * @param ry second radius
 * @param tilt turn of the first axis, in radians
 * @param from first angle
 * @param turn turn along the arc
 */
record SvgArc(Point centre, double rx, double ry, double tilt, double from, double turn) {

    static SvgArc between(Point a, Point b, double[] radiiAndTilt, boolean large, boolean sweep) {
        double tilt = radiiAndTilt[2];
        double cos = Math.cos(tilt);
        double sin = Math.sin(tilt);
        double hx = (a.xM() - b.xM()) / 2;
        double hy = (a.yM() - b.yM()) / 2;
        double x = cos * hx + sin * hy;
        double y = -sin * hx + cos * hy;
        double need =
                Math.sqrt(x * x / (radiiAndTilt[0] * radiiAndTilt[0]) + y * y / (radiiAndTilt[1] * radiiAndTilt[1]));
        double rx = radiiAndTilt[0] * Math.max(1, need);
        double ry = radiiAndTilt[1] * Math.max(1, need);
        double below = rx * rx * y * y + ry * ry * x * x;
        double root = Math.sqrt(Math.max(0, (rx * rx * ry * ry - below) / below)) * (large == sweep ? -1 : 1);
        double cx = root * rx * y / ry;
        double cy = -root * ry * x / rx;
        Point centre =
                new Point(cos * cx - sin * cy + (a.xM() + b.xM()) / 2, sin * cx + cos * cy + (a.yM() + b.yM()) / 2);
        double from = Math.atan2((y - cy) / ry, (x - cx) / rx);
        double turn = Math.atan2((-y - cy) / ry, (-x - cx) / rx) - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        return new SvgArc(centre, rx, ry, tilt, from, turn);
    }

    Point at(double t) {
        double angle = from + t * turn;
        double x = rx * Math.cos(angle);
        double y = ry * Math.sin(angle);
        return new Point(
                centre.xM() + Math.cos(tilt) * x - Math.sin(tilt) * y,
                centre.yM() + Math.sin(tilt) * x + Math.cos(tilt) * y);
    }
}
