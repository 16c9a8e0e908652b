package org.calicograph.fabric;

import java.util.Map;
import org.calicograph.colour.Colour;

/**
 * What a patch is for in a design, before and after a fabric has been chosen for it.
 *
 * @param name a word such as 'dark'; not blank
 */
public record Role(String name) {

    /** What the design lies on. */
    public static final Role BACKGROUND = new Role("background");
    /** The lightest of the design. */
    public static final Role LIGHT = new Role("light");
    /** Between light and dark. */
    public static final Role MEDIUM = new Role("medium");
    /** The darkest of the design. */
    public static final Role DARK = new Role("dark");
    /** A little of something that stands out. */
    public static final Role ACCENT = new Role("accent");

    private static final Map<String, String> STAND_INS = Map.of(
            "background", "#f3ecdd", "light", "#cfdcd6", "medium", "#7f9fa3", "dark", "#24425c", "accent", "#b5553c");

    public Role {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a role has no name; give it a word such as 'dark'");
        }
    }

    /** A role of one's own, by its name. */
    public static Role of(String name) {
        return new Role(name);
    }

    /**
     * The cloth that stands in until one is chosen, named like the role. The five roles above have
     * colours of their own; any other name always gets the same muted colour.
     */
    public Fabric standIn() {
        String hex = STAND_INS.get(name);
        if (hex != null) {
            return Fabric.of(name, hex);
        }
        int h = name.hashCode() * 0x9E3779B9;
        return Fabric.of(name, new Colour(0.35 + (h >>> 24) / 512.0, 0.35 + (h >>> 16 & 255) / 512.0, 0.35 + (h >>> 8 & 255) / 512.0));
    }

    @Override
    public String toString() {
        return name;
    }
}
