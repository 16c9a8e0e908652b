package org.calicograph.desk.opened;

import java.nio.file.Path;

/** Where the desk keeps what it knows between evenings. */
public final class OwnFolder {

    private OwnFolder() { }

    /** The folder named by the property {@code calicograph.data}, or else the user's own data folder. */
    public static Path find() {
        String given = System.getProperty("calicograph.data", "");
        if (!given.isBlank()) {
            return Path.of(given);
        }
        String xdg = System.getenv("XDG_DATA_HOME");
        Path base = xdg != null && !xdg.isBlank() ? Path.of(xdg) : Path.of(System.getProperty("user.home"), ".local", "share");
        return base.resolve("calicograph");
    }
}
