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

    /** A file to save a notebook in, named after its title; empty if the person thinks better of it. */
    Optional<Path> where(String title, Optional<Path> present) {
        FileChooser chooser = chooser("Save the notebook", present);
        chooser.setInitialFileName(named(title) + ".json");
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    private static String named(String title) {
        String name = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? "notebook" : name;
    }

    /** A file for a picture: a drawing, pixels or paper, as its ending says. */
    Optional<Path> picture(String title, Optional<Path> present) {
        return paper("Write this picture", named(title) + ".pdf", present,
                new FileChooser.ExtensionFilter("Paper at full size", "*.pdf"), new FileChooser.ExtensionFilter("Drawing", "*.svg"), new FileChooser.ExtensionFilter("Pixels", "*.png"));
    }

    Optional<Path> booklet(String title, Optional<Path> present) {
        return paper("Write the booklet", named(title) + "-booklet.pdf", present, new FileChooser.ExtensionFilter("Booklet", "*.pdf"));
    }

    private Optional<Path> paper(String words, String name, Optional<Path> present, FileChooser.ExtensionFilter... kinds) {
        FileChooser chooser = chooser(words, present);
        chooser.getExtensionFilters().setAll(kinds);
        chooser.setInitialFileName(name);
        return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
    }

    Optional<Path> which(Optional<Path> present) {
        return Optional.ofNullable(chooser("Open a notebook", present).showOpenDialog(owner)).map(File::toPath);
    }

    private static FileChooser chooser(String title, Optional<Path> present) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().addAll(new FileChooser.ExtensionFilter("Notebooks", "*.json"), new FileChooser.ExtensionFilter("All files", "*"));
        present.map(Path::getParent).map(Path::toFile).filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }
}
