package org.calicograph.geometry;

import org.calicograph.measure.Angle;

/**
 * An affine transform of the page: {@code x' = a x + c y + e}, {@code y' = b x + d y + f}.
 */
public record Transform(double a, double b, double c, double d, double e, double f) {

    /** Leaves everything as it is. */
    public static final Transform IDENTITY = new Transform(1, 0, 0, 1, 0, 0);

    /** A step of inches to the right and down. */
    public static Transform move(double dx, double dy) {
        return new Transform(1, 0, 0, 1, dx, dy);
    }

    /** A step. */
    public static Transform move(Point step) {
        return move(step.x(), step.y());
    }

    /** Larger or smaller from the origin, alike both ways. */
    public static Transform scale(double factor) {
        return scale(factor, factor);
    }

    /** Larger or smaller from the origin, by one factor across and another down. */
    public static Transform scale(double across, double down) {
        return new Transform(across, 0, 0, down, 0, 0);
    }

    /** Clockwise about the origin. */
    public static Transform turn(Angle angle) {
        double cos = angle.cos();
        double sin = angle.sin();
        return new Transform(cos, sin, -sin, cos, 0, 0);
    }

    /** Clockwise about a point. */
    public static Transform turn(Angle angle, Point about) {
        return move(about.times(-1)).then(turn(angle)).then(move(about));
    }

    /** In a line through the point, running in the given direction. */
    public static Transform mirror(Point through, Angle direction) {
        double cos = direction.times(2).cos();
        double sin = direction.times(2).sin();
        return move(through.times(-1)).then(new Transform(cos, sin, sin, -cos, 0, 0)).then(move(through));
    }

    /** Left becomes right, about an upright line at x. */
    public static Transform mirrorAcross(double x) {
        return new Transform(-1, 0, 0, 1, 2 * x, 0);
    }

    /** Top becomes bottom, about a level line at y. */
    public static Transform mirrorDown(double y) {
        return new Transform(1, 0, 0, -1, 0, 2 * y);
    }

    /** This transform first, then the next. */
    public Transform then(Transform next) {
        return new Transform(
                next.a * a + next.c * b, next.b * a + next.d * b,
                next.a * c + next.c * d, next.b * c + next.d * d,
                next.a * e + next.c * f + next.e, next.b * e + next.d * f + next.f);
    }

    /** Where a point goes. */
    public Point of(Point p) {
        return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
    }

    /** The step turned and scaled, not moved. */
    public Point ofStep(Point p) {
        return new Point(a * p.x() + c * p.y(), b * p.x() + d * p.y());
    }

    /** How many times as large an area becomes; below zero if it is mirrored. */
    public double determinant() {
        return a * d - b * c;
    }

    /** @throws IllegalArgumentException if the page is flattened to a line */
    public Transform inverse() {
        double det = determinant();
        if (det == 0) {
            throw new IllegalArgumentException("a transform that flattens the page can't be undone; scale by more than 0");
        }
        return new Transform(d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
    }

    /** True if circles stay circles: turning, mirroring, moving and even scaling. */
    public boolean keepsCircles() {
        double size = Math.hypot(a, b);
        double slack = 1e-9 * size;
        return Math.hypot(a - d, b + c) <= slack || Math.hypot(a + d, b - c) <= slack;
    }


    /** True if left and right are exchanged. */
    public boolean mirrors() {
        return determinant() < 0;
    }

    /** The factor by which lengths grow, where it is the same in every direction. */
    public double scale() {
        return Math.sqrt(Math.abs(determinant()));
    }
}
