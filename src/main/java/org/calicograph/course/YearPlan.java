package org.calicograph.course;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Table;

/**
 * The year's meetings, from the first sheet of paper to the show: as a table, as pages to hand out, and as a calendar file
 * that any calendar reads (RFC 5545).
 *
 * @param place    where the class meets
 * @param hour     when it begins, unless a meeting says otherwise
 * @param lasts    how long it lasts
 * @param meetings in the order of their dates
 */
public record YearPlan(String title, String place, LocalTime hour, Duration lasts, List<Meeting> meetings) implements Drawable {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

    /** @throws IllegalArgumentException if two meetings lie over each other */
    public YearPlan {
        meetings = meetings.stream().sorted(Comparator.comparing(Meeting::begins)).toList();
        for (int i = 1; i < meetings.size(); i++) {
            if (meetings.get(i).begins().isBefore(meetings.get(i - 1).ends())) {
                throw new IllegalArgumentException("'" + meetings.get(i).topic() + "' begins before '" + meetings.get(i - 1).topic() + "' ends, on "
                        + DAY.format(meetings.get(i).begins()) + "; move one of them");
            }
        }
    }

    /**
     * A year without meetings yet.
     *
     * @param hour such as {@code "18:30"}
     */
    public static YearPlan of(String title, String place, String hour, double hours) {
        try {
            return new YearPlan(title, place, LocalTime.parse(hour), Duration.ofMinutes(Math.round(hours * 60)), List.of());
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("'" + hour + "' is no time of day; write it as \"18:30\"", e);
        }
    }

    /**
     * One meeting more, at the usual hour.
     *
     * @param date  such as {@code "2027-03-04"}
     * @param bring what each student brings
     */
    public YearPlan meeting(String date, Season season, String topic, String... bring) {
        try {
            List<Meeting> all = new ArrayList<>(meetings);
            all.add(new Meeting(LocalDateTime.of(LocalDate.parse(date), hour), lasts, season, topic, List.of(bring), ""));
            return new YearPlan(title, place, hour, lasts, all);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("'" + date + "' is no date; write it as \"2027-03-04\"", e);
        }
    }

    /** The same with the notebook or handout that belongs to the meeting of this topic. */
    public YearPlan lesson(String topic, String notebook) {
        if (meetings.stream().noneMatch(m -> m.topic().equals(topic))) {
            throw new IllegalArgumentException("no meeting is about '" + topic + "'; there are " + String.join(", ", meetings.stream().map(m -> "'" + m.topic() + "'").toList()));
        }
        return new YearPlan(title, place, hour, lasts, meetings.stream().map(m -> m.topic().equals(topic) ? new Meeting(m.begins(), m.lasts(), m.season(), topic, m.bring(), notebook) : m).toList());
    }

    /** One row for each meeting. */
    public Table table() {
        Table table = Table.of(title, "When", "Season", "What", "Bring", "Lesson");
        for (Meeting m : meetings) {
            table = table.row(DAY.format(m.begins()) + ", " + m.begins().toLocalTime() + " to " + m.ends().toLocalTime(), m.season().words(), m.topic(), String.join(", ", m.bring()), m.lesson());
        }
        return table;
    }

    /** The plan on paper, season by season. */
    public Sheaf pages() {
        PageFlow flow = new PageFlow(Paper.A4, title);
        flow.chapter(title);
        flow.paragraph(place + ".");
        for (Season season : Season.values()) {
            Table table = Table.of(season.words(), "When", "What", "Bring");
            for (Meeting m : meetings) {
                if (m.season() == season) {
                    table = table.row(DAY.format(m.begins()) + ", " + m.begins().toLocalTime(), m.topic() + (m.lesson().isEmpty() ? "" : " (" + m.lesson() + ")"), String.join(", ", m.bring()));
                }
            }
            if (!table.rows().isEmpty()) {
                flow.heading(Character.toUpperCase(season.words().charAt(0)) + season.words().substring(1), Math.min(2, flow.height(table)));
                flow.table(table);
            }
        }
        return new Sheaf(title, Paper.A4, flow.pages());
    }

    /** The plan as a calendar file's text; times are by the clock of whoever reads it. */
    public String calendar() {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:-//Calicograph//Year plan//EN");
        for (Meeting m : meetings) {
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + STAMP.format(m.begins()) + "-" + Integer.toHexString((title + m.topic()).hashCode()) + "@calicograph");
            // A fixed stamp, so that the same plan always gives the same file.
            line(out, "DTSTAMP:" + STAMP.format(m.begins().toLocalDate().atStartOfDay()) + "Z");
            line(out, "DTSTART:" + STAMP.format(m.begins()));
            line(out, "DTEND:" + STAMP.format(m.ends()));
            line(out, "SUMMARY:" + text(m.topic()));
            line(out, "LOCATION:" + text(place));
            line(out, "CATEGORIES:" + text(m.season().words()));
            String more = (m.bring().isEmpty() ? "" : "Bring: " + String.join(", ", m.bring()) + ".") + (m.lesson().isEmpty() ? "" : "\nLesson: " + m.lesson());
            if (!more.isBlank()) {
                line(out, "DESCRIPTION:" + text(more.strip()));
            }
            line(out, "END:VEVENT");
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    /**
     * Writes the calendar file, whole.
     *
     * @throws IllegalArgumentException if there is another kind of file by this name
     */
    public String save(String file) {
        Path path = Path.of(file);
        try {
            if (Files.exists(path) && (!Files.isRegularFile(path) || !Files.readString(path, StandardCharsets.ISO_8859_1).startsWith("BEGIN:VCALENDAR"))) {
                throw new IllegalArgumentException(file + ": there is another kind of file by this name; give the calendar another, such as year.ics");
            }
            Path beside = Files.createTempFile(path.toAbsolutePath().getParent(), "calendar", ".part");
            Files.writeString(beside, calendar());
            Files.move(beside, path, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            return meetings.size() + " meetings in " + file;
        } catch (IOException e) {
            throw new UncheckedIOException(file + ": the calendar can't be written; check the folder", e);
        }
    }

    private static String text(String words) {
        return words.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n");
    }

    /** No line longer than 75 octets; the rest goes on the next, after a blank. */
    private static void line(StringBuilder out, String text) {
        int octets = 0;
        for (int i = 0; i < text.length(); ) {
            int code = text.codePointAt(i);
            String each = new String(Character.toChars(code));
            int more = each.getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > 75) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(each);
            octets += more;
            i += Character.charCount(code);
        }
        out.append("\r\n");
    }

    @Override
    public Exhibit show() {
        return Exhibit.of(table());
    }
}
