package org.calicograph.fabric;

/**
 * A cloth.
 *
 * @param name   what it is called on the shelf; not blank
 * @param colour the colour it reads as from across the room
 */
public record Fabric(String name, Colour colour) {

    public Fabric {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a fabric of colour " + colour + " has no name; give it one");
        }
    }

    public static Fabric of(String name, Colour colour) {
        return new Fabric(name, colour);
    }

    /** A fabric with its colour written as on the web. */
    public static Fabric of(String name, String hex) {
        return new Fabric(name, Colour.hex(hex));
    }

    @Override
    public String toString() {
        return name;
    }
}
