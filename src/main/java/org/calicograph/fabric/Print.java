package org.calicograph.fabric;

import java.util.Optional;

/**
 * What is printed on a cloth.
 *
 * @param scale     how large the print is
 * @param direction which way it runs
 * @param picture   the cloth true to scale; empty if there is no picture of it
 */
public record Print(Scale scale, Direction direction, Optional<Cloth> picture) {

    /** The size of a print as quilters sort it (common practice): small up to 1 in, medium up to 4 in. */
    public enum Scale { PLAIN, SMALL, MEDIUM, LARGE }

    /** Whether the cloth can be turned without being noticed. */
    public enum Direction {
        /** Tossed, or plain: any way up. */
        ANY,
        /** Stripes and the like: either way up, but not sideways. */
        TWO_WAY,
        /** One way up only. */
        ONE_WAY
    }

    /** No print: one colour, any way up. */
    public static final Print PLAIN = new Print(Scale.PLAIN, Direction.ANY, Optional.empty());

    /** A print of a scale, that may lie any way. */
    public static Print of(Scale scale) {
        return new Print(scale, Direction.ANY, Optional.empty());
    }

    /** A print known from its picture, its scale taken from the width of the repeat. */
    public static Print of(Cloth picture) {
        double repeat = picture.repeat().inInches();
        Scale scale = repeat <= 1 ? Scale.SMALL : repeat <= 4 ? Scale.MEDIUM : Scale.LARGE;
        return new Print(scale, Direction.ANY, Optional.of(picture));
    }

    /** The same print with a way up, or a way along. */
    public Print running(Direction way) {
        return new Print(scale, way, picture);
    }

    /** The same without its picture. */
    public Print unpictured() {
        return picture.isEmpty() ? this : new Print(scale, direction, Optional.empty());
    }

    /** The same print with its picture, repeat and all. */
    public Print pictured(Cloth cloth) {
        return new Print(scale, direction, Optional.of(cloth));
    }
}
