package org.calicograph.colour;

/**
 * CIE tristimulus values under the white of daylight (D65), white having a y of 1.
 *
 * <p>Constants of CSS Color Module Level 4 (W3C), sample code for conversions.
 */
public record Xyz(double x, double y, double z) {

    private static final Matrix D65_TO_D50 = Matrix.of(
            1.0479297925449969, 0.022946870601609652, -0.05019226628920524,
            0.02962780877005599, 0.9904344267538799, -0.017073799063418826,
            -0.009243040646204504, 0.015055191490298152, 0.7518742814281371);
    private static final Matrix D50_TO_D65 = Matrix.of(
            0.955473421488075, -0.02309845494876471, 0.06325924320057072,
            -0.0283697093338637, 1.0099953980813041, 0.021041441191917323,
            0.012314014864481998, -0.020507649298898964, 1.330365926242124);

    /** The same colour as it is numbered under the white of print (D50), adapted by Bradford's matrix. */
    Xyz underD50() {
        return D65_TO_D50.times(x, y, z, Xyz::new);
    }

    static Xyz fromD50(double x, double y, double z) {
        return D50_TO_D65.times(x, y, z, Xyz::new);
    }

    private static final Matrix TO_CONES = Matrix.of(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);
    private static final Matrix FROM_CONES = Matrix.of(0.9869929, -0.1470543, 0.1599627, 0.4323053, 0.5183603, 0.0492912, -0.0085287, 0.0400428, 0.9684867);

    /**
     * The colour as it would be seen if this white were that one: each of Bradford's three cone answers is scaled by what the whites differ
     * (Lam's matrix of 1985, the one of the ICC's profiles).
     */
    public Xyz adapted(Xyz from, Xyz to) {
        return TO_CONES.times(x, y, z, (l, m, s) -> TO_CONES.times(from.x, from.y, from.z, (lf, mf, sf) -> TO_CONES.times(to.x, to.y, to.z, (lt, mt, st) ->
                FROM_CONES.times(l * lt / lf, m * mt / mf, s * st / sf, Xyz::new))));
    }

    /** The same colour by CIELAB for a white. */
    public Lab lab(Lab.White white) {
        return Lab.of(this, white);
    }

    /** The same colour as light, white at D65; beyond 0 to 1 where a screen can't show it. */
    public LinearRgb linear() {
        return LinearRgb.of(this);
    }
}
