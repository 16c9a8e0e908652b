package org.calicograph.desk.dials;

import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.calicograph.wire.Dial;

/** The even steps that a slider moves a dial by; a value typed in may lie between them. */
public final class Notches {

    /** As many as a dial without steps gets, and the most that any has. */
    private static final int FREE = 200;
    private static final int MOST = 100_000;

    private final Dial dial;
    private final int last;

    private Notches(Dial dial, int last) {
        this.dial = dial;
        this.last = last;
    }

    public static Notches of(Dial dial) {
        if (dial instanceof Dial.Whole d) {
            return new Notches(dial, (int) Math.min(MOST, ((long) d.most() - d.least()) / d.step()));
        } else if (dial instanceof Dial.Real d) {
            return new Notches(dial, steps(d.most() - d.least(), d.step()));
        } else if (dial instanceof Dial.OfLength d) {
            return new Notches(dial, (int) Math.min(MOST, d.most().minus(d.least()).units() / d.step().units()));
        } else if (dial instanceof Dial.OfAngle d) {
            return new Notches(dial, steps(d.most().degrees() - d.least().degrees(), d.step().degrees()));
        } else if (dial instanceof Dial.Choice d) {
            return new Notches(dial, d.options().size() - 1);
        }
        return new Notches(dial, 1);
    }

    private static int steps(double range, double step) {
        return step > 0 ? (int) Math.min(MOST, Math.floor(range / step + 1e-9)) : FREE;
    }

    /** The number of the last notch; the first is 0. */
    public int last() {
        return last;
    }

    /** The value at a notch, as {@link Dial#text} writes it. */
    public String text(int notch) {
        int n = Math.max(0, Math.min(last, notch));
        if (dial instanceof Dial.Whole d) {
            return Integer.toString(d.least() + n * d.step());
        } else if (dial instanceof Dial.Real d) {
            return plain(d.step() > 0 ? d.least() + n * d.step() : d.least() + (d.most() - d.least()) * n / last);
        } else if (dial instanceof Dial.OfLength d) {
            Length value = d.least().plus(d.step().times((long) n));
            return new Dial.OfLength(d.name(), d.cell(), d.least(), d.most(), d.step(), value).text();
        } else if (dial instanceof Dial.OfAngle d) {
            double least = d.least().degrees();
            double value = d.step().degrees() > 0 ? least + n * d.step().degrees() : least + (d.most().degrees() - least) * n / last;
            return plain(Angle.degrees(value).degrees());
        } else if (dial instanceof Dial.Choice d) {
            return d.options().get(n);
        }
        return Boolean.toString(n == 1);
    }

    /** The dial's value at a notch, or between two, as a number: a length in inches, an angle in degrees. */
    double number(double notch) {
        if (dial instanceof Dial.Whole d) {
            return d.least() + notch * d.step();
        } else if (dial instanceof Dial.Real d) {
            return d.least() + (d.step() > 0 ? notch * d.step() : (d.most() - d.least()) * notch / last);
        } else if (dial instanceof Dial.OfLength d) {
            return d.least().inInches() + notch * d.step().inInches();
        } else if (dial instanceof Dial.OfAngle d) {
            double least = d.least().degrees();
            return least + (d.step().degrees() > 0 ? notch * d.step().degrees() : (d.most().degrees() - least) * notch / last);
        }
        return notch;
    }

    /** Nine decimals are finer than any step, and hide what sums of doubles add. */
    private static String plain(double value) {
        return Double.toString(Math.rint(value * 1e9) / 1e9);
    }

    /** The notch of the dial's present value, as a real number: between two where the value is. */
    public double position() {
        if (dial instanceof Dial.Whole d) {
            return ((double) d.value() - d.least()) / d.step();
        } else if (dial instanceof Dial.Real d) {
            return share(d.value() - d.least(), d.most() - d.least(), d.step());
        } else if (dial instanceof Dial.OfLength d) {
            return d.value().minus(d.least()).ratioTo(d.step());
        } else if (dial instanceof Dial.OfAngle d) {
            return share(d.value().degrees() - d.least().degrees(), d.most().degrees() - d.least().degrees(), d.step().degrees());
        } else if (dial instanceof Dial.Choice d) {
            return d.chosen();
        }
        return ((Dial.Switch) dial).on() ? 1 : 0;
    }

    private double share(double value, double range, double step) {
        return step > 0 ? value / step : range == 0 ? 0 : value / range * last;
    }

    /** The value so many notches on from the present one; the nearest notch counts as the present one. */
    public String moved(int steps) {
        double at = position();
        double on = steps > 0 ? Math.floor(at + 1e-9) : Math.ceil(at - 1e-9);
        return text((int) on + steps);
    }
}
