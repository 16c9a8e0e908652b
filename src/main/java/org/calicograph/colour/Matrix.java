package org.calicograph.colour;

/** A three by three matrix, by rows. */
record Matrix(double a, double b, double c, double d, double e, double f, double g, double h, double i) {

    /** Takes three parts of a colour. */
    @FunctionalInterface
    interface Maker<T> {
        T make(double x, double y, double z);
    }

    static Matrix of(double... rows) {
        return new Matrix(rows[0], rows[1], rows[2], rows[3], rows[4], rows[5], rows[6], rows[7], rows[8]);
    }

    <T> T times(double x, double y, double z, Maker<T> maker) {
        return maker.make(a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z);
    }

    /** A share of the way to another matrix. */
    Matrix towards(Matrix o, double t) {
        return new Matrix(a + (o.a - a) * t, b + (o.b - b) * t, c + (o.c - c) * t, d + (o.d - d) * t, e + (o.e - e) * t,
                f + (o.f - f) * t, g + (o.g - g) * t, h + (o.h - h) * t, i + (o.i - i) * t);
    }
}
