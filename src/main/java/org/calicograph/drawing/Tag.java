package org.calicograph.drawing;

/**
 * What a part of a page is to whoever hears it read: a heading, a paragraph, a drawing. SVG says it by roles, PDF by its
 * structure; a PNG can't say it.
 *
 * @param said      for a {@link Role#FIGURE} what it shows, for a {@link Role#TABLE} what it is of, for a heading its words; may be empty elsewhere
 * @param continued true where it goes on with the last part of the same role on the page before
 */
public record Tag(Role role, String said, boolean continued) {

    /** The parts of a page. Words stand in {@linkplain #isLeaf leaves} alone. */
    public enum Role {
        /** The name of the whole. */
        TITLE,
        /** The name of a part of the whole. */
        CHAPTER,
        /** A heading within a chapter. */
        HEADING,
        PARAGRAPH,
        /** Something to heed, in paragraphs of its own. */
        NOTE,
        LIST,
        /** A point of a list: its mark and its words. */
        ITEM,
        MARK,
        WORDS,
        TABLE,
        ROW,
        /** The name of a column. */
        COLUMN,
        CELL,
        /** A drawing, with words for whoever can't see it. */
        FIGURE,
        /** The words beneath a drawing. */
        CAPTION,
        /** What repeats or only adorns: page numbers, rules, grounds, boxes to tick. */
        FURNITURE;

        /** True for what holds words or a drawing; what a leaf holds is not parted any further. */
        public boolean isLeaf() {
            return switch (this) {
                case NOTE, LIST, ITEM, TABLE, ROW -> false;
                default -> true;
            };
        }

        /** How far a heading is from the top: 1 for a title; 0 for what is no heading. */
        public int rank() {
            return this == TITLE ? 1 : this == CHAPTER ? 2 : this == HEADING ? 3 : 0;
        }
    }

    /** @throws IllegalArgumentException if a figure says nothing */
    public Tag {
        said = said.replaceAll("\\p{Cntrl}+", " ").strip();
        if (role == Role.FIGURE && said.isEmpty()) {
            throw new IllegalArgumentException("a figure says nothing to whoever can't see it; say what it shows");
        }
    }

    /** A part that begins here, with nothing to say beyond its own words. */
    public static Tag of(Role role) {
        return new Tag(role, "", false);
    }

    /** A part that begins here. */
    public static Tag of(Role role, String said) {
        return new Tag(role, said, false);
    }

    /** The same going on from the page before. */
    public Tag goingOn() {
        return new Tag(role, said, true);
    }
}
