package org.calicograph.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How somebody sees colours.
 *
 * <p>Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, 'A Physiologically-based Model for
 * Simulation of Color Vision Deficiency', IEEE Transactions on Visualization and Computer Graphics
 * 15(6), 2009. The matrices apply to linear sRGB; between their eleven steps of severity they are
 * interpolated. A simulation, not a diagnosis.
 *
 * @param kind     which cones differ
 * @param severity 0 for usual colour vision to 1 for cones that are missing
 */
public record ColourVision(Kind kind, double severity) {

    /** Which cones differ. */
    public enum Kind {
        /** Long-wave cones: reds look dark. */
        PROTAN,
        /** Middle-wave cones: the most common. */
        DEUTAN,
        /** Short-wave cones: rare. */
        TRITAN
    }

    /** Sees all three. */
    public static final ColourVision USUAL = new ColourVision(Kind.DEUTAN, 0);
    /** Without the cones for long waves: red is dark, and near green. */
    public static final ColourVision PROTANOPIA = new ColourVision(Kind.PROTAN, 1);
    /** Without the cones for middle waves: red and green are near. */
    public static final ColourVision DEUTERANOPIA = new ColourVision(Kind.DEUTAN, 1);
    /** Without the cones for short waves: blue and green are near. */
    public static final ColourVision TRITANOPIA = new ColourVision(Kind.TRITAN, 1);

    private static final Map<Kind, List<Matrix>> MATRICES = read();

    public ColourVision {
        if (!(severity >= 0 && severity <= 1)) {
            throw new IllegalArgumentException("colour vision with a severity of " + severity + " can't be simulated; use 0 to 1");
        }
    }

    private static Map<Kind, List<Matrix>> read() {
        Map<Kind, List<Matrix>> all = new EnumMap<>(Kind.class);
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                ColourVision.class.getResourceAsStream("colour-vision.csv"), StandardCharsets.UTF_8))) {
            in.lines().skip(2).forEach(line -> {
                String[] f = line.split(",");
                double[] m = new double[9];
                for (int i = 0; i < 9; i++) {
                    m[i] = Double.parseDouble(f[i + 2]);
                }
                all.computeIfAbsent(Kind.valueOf(f[0]), k -> new ArrayList<>()).add(Matrix.of(m));
            });
        } catch (IOException e) {
            throw new UncheckedIOException("the table of colour vision can't be read; build again", e);
        }
        return all;
    }

    private Matrix matrix() {
        List<Matrix> steps = MATRICES.get(kind);
        double place = severity * (steps.size() - 1);
        int below = Math.min((int) place, steps.size() - 2);
        return steps.get(below).towards(steps.get(below + 1), place - below);
    }

    /** The light that looks to others as the given light looks to this eye. */
    public LinearRgb sees(LinearRgb light) {
        return matrix().times(light.red(), light.green(), light.blue(), LinearRgb::new);
    }

    /** The colour that looks to others as the given one looks to this eye. */
    public Colour sees(Colour colour) {
        return severity == 0 ? colour : sees(colour.linear()).clipped();
    }

    /** In words: 'deuteranopia', 'protanomaly, severity 0.5'. */
    @Override
    public String toString() {
        if (severity == 0) {
            return "usual colour vision";
        }
        String stem = switch (kind) {
            case PROTAN -> "protan";
            case DEUTAN -> "deuteran";
            case TRITAN -> "tritan";
        };
        return severity == 1 ? stem + "opia" : stem + "omaly, severity " + severity;
    }
}
