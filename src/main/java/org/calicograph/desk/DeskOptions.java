package org.calicograph.desk;

import java.nio.file.Path;
import org.calicograph.desk.opened.OwnFolder;
import org.calicograph.session.SessionOptions;

/**
 * Where a desk keeps things, and how its kernels run.
 *
 * @param own     the desk's own folder: recent notebooks, trust, preferences, unsaved work without a file
 * @param product the product's folder, whose notebooks are trusted
 */
record DeskOptions(Path own, Path product, SessionOptions session) {

    static DeskOptions standard() {
        return new DeskOptions(OwnFolder.find(), Path.of(System.getProperty("calicograph.home", "")).toAbsolutePath().resolve("notebooks"),
                SessionOptions.standard().forDesk());
    }
}
