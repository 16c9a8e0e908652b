package org.calicograph.desk.opened;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The notebooks opened last, the latest first. */
public final class Recents {

    private static final int MOST = 12;

    private final Path file;

    public Recents(Path folder) {
        this.file = folder.resolve("recent.txt");
    }

    /** Those that are still there. */
    public List<Path> list() {
        return Lines.read(file).stream().filter(l -> !l.isBlank()).map(Path::of).filter(Files::isRegularFile).toList();
    }

    public void add(Path opened) {
        List<String> all = new ArrayList<>(Lines.read(file));
        String name = opened.toAbsolutePath().normalize().toString();
        all.remove(name);
        all.add(0, name);
        Lines.write(file, all.subList(0, Math.min(MOST, all.size())));
    }
}
