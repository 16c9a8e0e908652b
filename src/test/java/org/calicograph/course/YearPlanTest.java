package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calendar file is read back by the rules of RFC 5545: lines end with CR LF, none is longer than 75 octets, a blank goes on with the last one. */
class YearPlanTest {

    private static final YearPlan PLAN = YearPlan.of("The year at Saltmarsh Reach", "The sail loft, upstairs; mind the step", "18:30", 2)
            .meeting("2027-03-04", Season.DRAFTING, "Grids and compasses", "a compass", "paper, ruled")
            .meeting("2027-11-25", Season.QUILTING, "The show")
            .meeting("2027-06-03", Season.COLOUR, "Tints, shades and tones: who holds what, and why the grey-green of the mudflats is nobody's", "three swatches")
            .lesson("Grids and compasses", "first-lesson.json");

    private static List<String> unfolded(String file) {
        List<String> lines = new ArrayList<>();
        for (String line : file.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
            assertTrue(!line.contains("\n") && !line.contains("\r"), line);
            if (line.startsWith(" ")) {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1) + line.substring(1));
            } else {
                lines.add(line);
            }
        }
        return lines;
    }

    @Test
    void a_calendar_reads_every_meeting_in_order_with_its_place_and_its_end() {
        List<String> lines = unfolded(PLAN.calendar());
        assertEquals("BEGIN:VCALENDAR", lines.get(0));
        assertEquals("END:VCALENDAR", lines.get(lines.size() - 1));
        assertEquals(List.of("DTSTART:20270304T183000", "DTSTART:20270603T183000", "DTSTART:20271125T183000"), lines.stream().filter(l -> l.startsWith("DTSTART")).toList());
        assertEquals("DTEND:20270304T203000", lines.stream().filter(l -> l.startsWith("DTEND")).findFirst().orElseThrow());
        assertTrue(lines.contains("LOCATION:The sail loft\\, upstairs\\; mind the step"));
        assertTrue(lines.contains("DESCRIPTION:Bring: a compass\\, paper\\, ruled.\\nLesson: first-lesson.json"));
        assertEquals(3, lines.stream().filter(l -> l.startsWith("UID:")).distinct().count());
        for (String needed : List.of("UID", "DTSTAMP", "DTSTART")) {
            assertEquals(3, lines.stream().filter(l -> l.startsWith(needed + ":")).count(), needed);
        }
    }

    @Test
    void meetings_that_lie_over_each_other_dates_that_are_none_and_unknown_topics_are_refused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PLAN.meeting("2027-03-04", Season.COLOUR, "Twice")).getMessage().contains("move one of them"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PLAN.meeting("4.3.2027", Season.COLOUR, "No date")).getMessage().contains("write it as \"2027-03-04\""));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PLAN.lesson("Grid", "x.json")).getMessage().contains("'Grids and compasses'"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> YearPlan.of("a", "b", "half six", 2)).getMessage().contains("18:30"));
    }

    @Test
    void a_saved_calendar_replaces_itself_and_nothing_else(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("year.ics");
        assertEquals("3 meetings in " + file, PLAN.save(file.toString()));
        PLAN.save(file.toString());
        assertEquals(PLAN.calendar(), Files.readString(file));
        Path other = Files.writeString(folder.resolve("notes.txt"), "mine");
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PLAN.save(other.toString())).getMessage().contains("another kind of file"));
        assertEquals("mine", Files.readString(other));
        assertEquals(2, folder.toFile().list().length);
    }
}
