package fayline.method.plate;

/** A rectangular plate whose edges may turn, under even pressure: Navier's double series ([timoshenko1959], art. 28 and 86). */
final class NavierSeries {
    private static final int LAST_TERM = 401;

    private NavierSeries() {}

    static BentPlate bent(PlateStiffness d, double aM, double bM, double pressurePa) {
        double centre = 0;
        double curvature1 = 0;
        double curvature2 = 0;
        for (int m = 1; m <= LAST_TERM; m += 2) {
            double x = m * Math.PI / aM;
            for (int n = 1; n <= LAST_TERM; n += 2) {
                double y = n * Math.PI / bM;
                double load = 16 * pressurePa / (Math.PI * Math.PI * m * n);
                double w = load
                        / (d.d11Nm() * x * x * x * x + 2 * d.mixedNm() * x * x * y * y + d.d22Nm() * y * y * y * y);
                double sign = (m + n) / 2 % 2 == 1 ? 1 : -1;
                centre += sign * w;
                curvature1 += sign * w * x * x;
                curvature2 += sign * w * y * y;
            }
        }
        return new BentPlate(
                centre,
                d.d11Nm() * curvature1 + d.d12Nm() * curvature2,
                d.d12Nm() * curvature1 + d.d22Nm() * curvature2,
                0,
                0);
    }
}
