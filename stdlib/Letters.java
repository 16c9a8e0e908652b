package org.calicograph.stdlib;

import static org.calicograph.fabric.Role.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.patchwork.Placed;

/**
 * Pieced letters and numbers for names and years: five squares wide and seven high, sewn row by row with straight seams.
 * The letter is of the dark, its ground of the background.
 *
 * <p>Drafting: five squares of graph paper by seven; corners are half squares (common practice for pieced letters; these are drawn for this).
 */
public final class Letters {

    /** Rows from above: # the letter, . the ground; d q p b a half square with the letter lower right, upper left, upper right, lower left. */
    private static final Map<Character, String> ROWS = Map.ofEntries(
            Map.entry('A', "d###b #...# #...# ##### #...# #...# #...#"), Map.entry('B', "####b #...# #...# ##### #...# #...# ####q"),
            Map.entry('C', "d#### #.... #.... #.... #.... #.... p####"), Map.entry('D', "####b #...# #...# #...# #...# #...# ####q"),
            Map.entry('E', "##### #.... #.... ####. #.... #.... #####"), Map.entry('F', "##### #.... #.... ####. #.... #.... #...."),
            Map.entry('G', "d#### #.... #.... #..## #...# #...# p###q"), Map.entry('H', "#...# #...# #...# ##### #...# #...# #...#"),
            Map.entry('I', "##### ..#.. ..#.. ..#.. ..#.. ..#.. #####"), Map.entry('J', "##### ...#. ...#. ...#. ...#. #..#. p##q."),
            Map.entry('K', "#..dq #.dq. #dq.. ##... #pb.. #.pb. #..pb"), Map.entry('L', "#.... #.... #.... #.... #.... #.... #####"),
            Map.entry('M', "#b.d# ##### #p#q# #...# #...# #...# #...#"), Map.entry('N', "#b..# #pb.# #.pb# #..p# #...# #...# #...#"),
            Map.entry('O', "d###b #...# #...# #...# #...# #...# p###q"), Map.entry('P', "####b #...# #...# ####q #.... #.... #...."),
            Map.entry('Q', "d###b #...# #...# #...# #.b.# #.pb# p####"), Map.entry('R', "####b #...# #...# ####q #pb.. #.pb. #..pb"),
            Map.entry('S', "d#### #.... #.... p###b ....# ....# ####q"), Map.entry('T', "##### ..#.. ..#.. ..#.. ..#.. ..#.. ..#.."),
            Map.entry('U', "#...# #...# #...# #...# #...# #...# p###q"), Map.entry('V', "#...# #...# #...# #...# pb.dq .p#q. ..#.."),
            Map.entry('W', "#...# #...# #...# #...# #d#b# ##### #q.p#"), Map.entry('X', "#...# pb.dq .p#q. ..#.. .d#b. dq.pb #...#"),
            Map.entry('Y', "#...# pb.dq .p#q. ..#.. ..#.. ..#.. ..#.."), Map.entry('Z', "##### ...dq ..dq. .dq.. dq... #.... #####"),
            Map.entry('0', "d###b #...# #...# #.#.# #...# #...# p###q"), Map.entry('1', "..#.. .d#.. ..#.. ..#.. ..#.. ..#.. .###."),
            Map.entry('2', "####b ....# ....# d###q #.... #.... #####"), Map.entry('3', "####b ....# ....# .#### ....# ....# ####q"),
            Map.entry('4', "#..#. #..#. #..#. ##### ...#. ...#. ...#."), Map.entry('5', "##### #.... #.... ####b ....# ....# ####q"),
            Map.entry('6', "d#### #.... #.... ####b #...# #...# p###q"), Map.entry('7', "##### ....# ...dq ...#. ..dq. ..#.. ..#.."),
            Map.entry('8', "d###b #...# #...# ##### #...# #...# p###q"), Map.entry('9', "d###b #...# #...# p#### ....# ....# ####q"),
            Map.entry('-', "..... ..... ..... .###. ..... ..... ....."), Map.entry('.', "..... ..... ..... ..... ..... .##.. .##.."),
            Map.entry(' ', "..... ..... ..... ..... ..... ..... ....."));

    private Letters() { }

    /** The letters and signs that there are. */
    public static String all() {
        return "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-. ";
    }

    /**
     * A letter of the given finished height; it is 5/7 as wide.
     *
     * @throws IllegalArgumentException naming the sign, if there is none such
     */
    public static Block of(char letter, Length height) {
        String drawn = ROWS.get(Character.toUpperCase(letter));
        if (drawn == null) {
            throw new IllegalArgumentException("there is no letter '" + letter + "' to piece; there are " + all().strip());
        }
        String[] rows = drawn.split(" ");
        BlockDraft draft = Block.onGrid("Letter " + (letter == ' ' ? "space" : String.valueOf(letter)), 5, 7, height.times(5L).dividedBy(7), height);
        for (int y = 0; y < rows.length; ) {
            int high = 1;
            boolean straight = rows[y].matches("[#.]+");
            while (straight && y + high < rows.length && rows[y + high].equals(rows[y])) {
                high++;
            }
            draft = row(draft, rows[y], y, high);
            y += high;
        }
        return draft.block();
    }

    private static BlockDraft row(BlockDraft draft, String row, int y, int high) {
        BlockDraft out = draft;
        for (int x = 0; x < row.length(); ) {
            char sign = row.charAt(x);
            int wide = 1;
            while ((sign == '#' || sign == '.') && x + wide < row.length() && row.charAt(x + wide) == sign) {
                wide++;
            }
            out = switch (sign) {
                case '#' -> out.rectangle(DARK, x, y, wide, high);
                case '.' -> out.rectangle(BACKGROUND, x, y, wide, high);
                case 'd' -> out.halvesRising(x, y, 1, BACKGROUND, DARK);
                case 'q' -> out.halvesRising(x, y, 1, DARK, BACKGROUND);
                case 'p' -> out.halvesFalling(x, y, 1, DARK, BACKGROUND);
                default -> out.halvesFalling(x, y, 1, BACKGROUND, DARK);
            };
            x += wide;
        }
        return out;
    }

    /** A word, its letters one square apart, with the ground between. */
    public static Assembly word(String text, Length height) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("a word without letters can't be pieced; write one");
        }
        Length wide = height.times(5L).dividedBy(7);
        Length apart = height.dividedBy(7);
        List<Placed> parts = new ArrayList<>();
        Length x = Length.ZERO;
        for (int i = 0; i < text.length(); i++) {
            if (i > 0) {
                parts.add(Placed.at("space" + i, Block.onGrid("space", 1, 7, apart, height).rectangle(BACKGROUND, 0, 0, 1, 7).block(), x.inInches(), 0));
                x = x.plus(apart);
            }
            parts.add(Placed.at("letter" + (i + 1), of(text.charAt(i), height), x.inInches(), 0));
            x = x.plus(wide);
        }
        return Assembly.of(text, Region.rectangle(Box.of(x, height)), parts);
    }
}
