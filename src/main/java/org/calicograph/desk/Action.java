package org.calicograph.desk;

import java.util.Optional;
import javafx.scene.input.KeyCombination;

/**
 * Something that can be done from a menu and by keys.
 *
 * @param menu the menu it stands in
 * @param part the part of that menu; a line parts one from the next
 * @param name the words in the menu
 * @param keys empty if it has none
 */
record Action(String menu, int part, String name, Optional<KeyCombination> keys, Runnable deed) {

    static Action of(String menu, int part, String name, String keys, Runnable deed) {
        return new Action(menu, part, name, keys.isEmpty() ? Optional.empty() : Optional.of(KeyCombination.valueOf(keys)), deed);
    }
}
