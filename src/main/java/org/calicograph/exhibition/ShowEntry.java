package org.calicograph.exhibition;

import java.util.Optional;
import org.calicograph.drawing.Picture;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;
import org.calicograph.show.PatchworkPicture;

/**
 * A quilt that is shown.
 *
 * @param width   finished
 * @param height  finished
 * @param words   what the maker says of it; may be empty
 * @param picture the quilt; none if there is no drawing of it
 */
public record ShowEntry(String title, String maker, Length width, Length height, String words, Optional<Picture> picture) {

    /** @throws IllegalArgumentException if the quilt has no size or no title */
    public ShowEntry {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a quilt of " + maker + " has no title; give it one, or 'untitled'");
        }
        if (!width.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException("'" + title + "' of " + width + " x " + height + " can't hang; use its finished size");
        }
    }

    /** A quilt by its drawing. */
    public static ShowEntry of(Quilt quilt, String maker) {
        return new ShowEntry(quilt.title(), maker, quilt.width(), quilt.height(), "", Optional.of(PatchworkPicture.of(quilt)));
    }

    /** A quilt of which there is no drawing, by its finished size. */
    public static ShowEntry of(String title, String maker, Length width, Length height) {
        return new ShowEntry(title, maker, width, height, "", Optional.empty());
    }

    /** With what the maker says of it. */
    public ShowEntry saying(String text) {
        return new ShowEntry(title, maker, width, height, text.strip(), picture);
    }

    /** As a card says it: {@code 60 x 72 in} or {@code 152 x 183 cm}. */
    String size() {
        return near(width) + " x " + near(height);
    }

    private static Length near(Length length) {
        return length.roundedTo(Length.inches(1, 2));
    }
}
