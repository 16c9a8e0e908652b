package org.calicograph.desk.opened;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.measure.Length;

/** What a person likes, by name, kept between evenings. */
public final class Preferences {

    private final Path file;

    public Preferences(Path folder) {
        this.file = folder.resolve("preferences.txt");
    }

    public String get(String name, String otherwise) {
        return all().getOrDefault(name, otherwise);
    }

    /** True if there is little light. */
    public boolean night() {
        return get("look", "day").equals("night");
    }

    public void setNight(boolean on) {
        set("look", on ? "night" : "day");
    }

    /** How lengths are written. */
    public Length.System lengths() {
        return get("lengths", "inch").equals(Length.System.METRIC.word()) ? Length.System.METRIC : Length.System.INCH;
    }

    public void setLengths(Length.System system) {
        set("lengths", system.word());
    }

    /** How large the letters are, in percent; empty for as they come. */
    public String letters() {
        return get("letters", "");
    }

    public void setLetters(int percent) {
        set("letters", Integer.toString(percent));
    }

    /** True if nothing on the desk is to move by itself. */
    public boolean still() {
        return get("motion", "moving").equals("still");
    }

    public void setStill(boolean on) {
        set("motion", on ? "still" : "moving");
    }

    public void set(String name, String value) {
        Map<String, String> all = all();
        all.put(name, value);
        Lines.write(file, all.entrySet().stream().map(e -> e.getKey() + "=" + e.getValue()).toList());
    }

    private Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        List<String> lines = Lines.read(file);
        for (String line : lines) {
            int at = line.indexOf('=');
            if (at > 0) {
                all.put(line.substring(0, at), line.substring(at + 1));
            }
        }
        return all;
    }
}
