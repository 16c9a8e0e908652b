package org.calicograph.command.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.colour.Colour;
import org.calicograph.notebook.WholeFile;
import picocli.CommandLine.Model.CommandSpec;

/** Writes what cells show into a folder: an SVG and a PNG for each picture, a CSV for each table, a text for words. */
public final class OutputFiles {

    /** The longer side of a PNG, in pixels. */
    private static final int PIXELS = 1600;
    private static final double MOST_PER_INCH = 300;

    /** Names as a report of ours lists them. */
    private static final Pattern LISTED = Pattern.compile("\"files\": \\[([^\\]]*)\\]");
    private static final Pattern NAME = Pattern.compile("\"([A-Za-z0-9_-]+\\.(?:svg|png|csv|txt))\"");

    private final Path folder;
    /** Whose each name is, in small letters, since some systems don't tell large ones apart. */
    private final Map<String, String> owners = new HashMap<>();
    private final Set<String> used = new HashSet<>();

    /**
     * @param cells the ids of all cells that may be written: the first thing of each bears its name
     */
    public OutputFiles(Path folder, Collection<String> cells) {
        this.folder = folder;
        cells.forEach(cell -> owners.putIfAbsent(safe(cell).toLowerCase(Locale.ROOT), cell));
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, folder + ": the folder can't be made (" + Refusal.reason(e) + "); name another with --out", e);
        }
    }

    /** Writes an exhibit under names that begin with the cell's id; gives the names. */
    public List<String> write(String cell, Exhibit exhibit) {
        List<String> names = new ArrayList<>();
        write(cell, exhibit, names, new int[1]);
        return names;
    }

    private void write(String cell, Exhibit exhibit, List<String> names, int[] count) {
        if (exhibit instanceof Exhibit.Several several) {
            several.parts().forEach(part -> write(cell, part, names, count));
            return;
        }
        if (exhibit instanceof Exhibit.Nothing) {
            return;
        }
        String base = free(cell, count);
        if (exhibit instanceof Exhibit.Drawn drawn) {
            names.add(save(base + ".svg", svg(drawn.picture())));
            names.add(save(base + ".png", png(drawn.picture(), PIXELS)));
        } else if (exhibit instanceof Exhibit.Tabled tabled) {
            names.add(save(base + ".csv", tabled.table().csv().getBytes(StandardCharsets.UTF_8)));
        } else if (exhibit instanceof Exhibit.Words words) {
            names.add(save(base + ".txt", (words.text() + "\n").getBytes(StandardCharsets.UTF_8)));
        }
    }

    private String free(String cell, int[] count) {
        while (true) {
            String base = safe(cell) + (count[0]++ == 0 ? "" : "-" + count[0]);
            String key = base.toLowerCase(Locale.ROOT);
            if (owners.getOrDefault(key, cell).equals(cell) && used.add(key)) {
                return base;
            }
        }
    }

    /** Takes away what the folder's report lists and this run has not written: what is there is of this run. */
    public void clearLast(Collection<String> written) {
        Path report = folder.resolve("report.json");
        try {
            if (!Files.isRegularFile(report)) {
                return;
            }
            Matcher lists = LISTED.matcher(Files.readString(report));
            while (lists.find()) {
                Matcher names = NAME.matcher(lists.group(1));
                while (names.find()) {
                    if (!written.contains(names.group(1)) && Files.isRegularFile(folder.resolve(names.group(1)), LinkOption.NOFOLLOW_LINKS)) {
                        OutputPlace.require(folder.resolve(names.group(1)));
                        Files.delete(folder.resolve(names.group(1)));
                    }
                }
            }
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, report + ": what the last drawing left can't be taken away (" + Refusal.reason(e) + "); empty the folder", e);
        }
    }

    public static byte[] png(Picture picture, int pixels) {
        return PngWriter.write(picture, PngWriter.fitting(picture, pixels, pixels, MOST_PER_INCH), Colour.WHITE);
    }

    public static byte[] svg(Picture picture) {
        return SvgWriter.write(picture).getBytes(StandardCharsets.UTF_8);
    }

    /** Cell ids are letters, digits and the like; anything else becomes a line, so that a name stays in its folder. */
    private static String safe(String id) {
        return id.replaceAll("[^A-Za-z0-9_-]", "_");
    }

    public String save(String name, byte[] bytes) {
        save(folder.resolve(name), bytes);
        return name;
    }

    /** True where a file is not a file but standard output. */
    public static boolean isStandardOutput(Path file) {
        return file.toString().equals("-");
    }

    /** Tells what was written: on standard output, unless that is where it was written. */
    public static void tell(Path file, CommandSpec command, String words) {
        (isStandardOutput(file) ? command.commandLine().getErr() : command.commandLine().getOut()).println(words.replace(" in -", " on standard output"));
    }

    /** Writes a file whole or not at all; {@code -} to standard output. */
    public static void save(Path file, byte[] bytes) {
        if (isStandardOutput(file)) {
            System.out.write(bytes, 0, bytes.length);
            System.out.flush();
            if (System.out.checkError()) {
                throw new Refusal(Refusal.FILE, "standard output can't be written: whoever reads it has closed it, or the disk is full");
            }
            return;
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            OutputPlace.require(file);
            WholeFile.write(file, bytes);
        } catch (IOException e) {
            throw new Refusal(Refusal.FILE, file + ": it can't be written (" + Refusal.reason(e) + "); check the folder and its permissions", e);
        }
    }
}
