package org.calicograph.desk.results;

import javafx.scene.effect.BoxBlur;
import javafx.scene.effect.ColorAdjust;
import javafx.scene.effect.Effect;

/** What eyes half shut leave of a picture: light and dark, without edges. */
final class Squint {

    private Squint() { }

    static Effect effect() {
        ColorAdjust grey = new ColorAdjust();
        grey.setSaturation(-1);
        BoxBlur blur = new BoxBlur(5, 5, 1);
        blur.setInput(grey);
        return blur;
    }
}
