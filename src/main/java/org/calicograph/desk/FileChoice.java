package org.calicograph.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks for files with the system's own dialogs. */
final class FileChoice {

    private final Window owner;

    FileChoice(Window owner) {
        this.owner = owner;
    }

    /** A file to save a study in, named after its title; empty if the person thinks better of it. */
    Optional<Path> where(String title, Optional<Path> present) {
        FileChooser chooser = chooser("Save the study", present);
        String name = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        chooser.setInitialFileName((name.isEmpty() ? "study" : name) + ".json");
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    Optional<Path> which(Optional<Path> present) {
        return Optional.ofNullable(chooser("Open a study", present).showOpenDialog(owner)).map(File::toPath);
    }

    private static FileChooser chooser(String title, Optional<Path> present) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().addAll(new FileChooser.ExtensionFilter("Studies", "*.json"), new FileChooser.ExtensionFilter("All files", "*"));
        present.map(Path::getParent).map(Path::toFile).filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }
}
