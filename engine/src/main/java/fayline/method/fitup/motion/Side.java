package fayline.method.fitup.motion;

/** The side of the aircraft a part is on, seen from outside: it decides which way x and a turn point. */
public enum Side {
    /** Nose at the left: x aft, a positive turn puts the nose down. */
    LEFT,
    /** Nose at the right: x forward, a positive turn puts the nose up. */
    RIGHT;

    /** The way of a shift along x. */
    public String along(double dxMm) {
        return dxMm > 0 == (this == LEFT) ? "aft" : "forward";
    }

    /** The way of a shift along y. */
    public String upward(double dyMm) {
        return dyMm > 0 ? "up" : "down";
    }

    /** The way of a turn. */
    public String turned(double turnRad) {
        return turnRad > 0 == (this == LEFT) ? "nose-down" : "nose-up";
    }

    /** The other side. */
    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
