package org.calicograph.desk;

import java.util.Optional;
import javafx.scene.input.KeyCombination;

/**
 * Something that can be done from a menu and by keys.
 *
 * @param group the menu it stands in
 * @param name  the words in the menu
 * @param keys  empty if it has none
 */
record Action(String group, String name, Optional<KeyCombination> keys, Runnable deed) {

    static Action of(String group, String name, String keys, Runnable deed) {
        return new Action(group, name, keys.isEmpty() ? Optional.empty() : Optional.of(KeyCombination.valueOf(keys)), deed);
    }
}
