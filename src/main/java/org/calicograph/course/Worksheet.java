package org.calicograph.course;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.calicograph.book.Sheaf;
import org.calicograph.book.page.PageFlow;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;

/**
 * Problems on paper, with numbers of their own for every student, and the teacher's sheet with all answers kept apart.
 * The same title, student and topic always give the same numbers, so that a lost sheet can be printed again.
 *
 * @param title    what the sheet is called
 * @param students who gets one, each with a page of her own
 * @param topics   what is asked, in order
 */
public record Worksheet(String title, List<String> students, List<Topic> topics, Paper paper) implements Drawable {

    /** How often numbers are drawn anew before two students may have the same. */
    private static final int TRIES = 200;
    /** Room to work in below each problem, in inches. */
    private static final double ROOM = 0.75;

    /**
     * A sheet of problems.
     *
     * @throws IllegalArgumentException if there is no topic, or a student is named twice
     */
    public Worksheet {
        students = List.copyOf(students);
        topics = List.copyOf(topics);
        if (topics.isEmpty()) {
            throw new IllegalArgumentException("the worksheet '" + title + "' asks nothing; name a topic, such as Topic.BORDER_STRIPS");
        }
        Set<String> seen = new HashSet<>();
        for (String student : students) {
            if (!seen.add(student)) {
                throw new IllegalArgumentException("the worksheet '" + title + "' names the student '" + student + "' twice; tell the two apart");
            }
        }
    }

    /** A sheet of problems on A4; name the students with {@link #forStudents}. */
    public static Worksheet of(String title, Topic... topics) {
        return new Worksheet(title, List.of(), List.of(topics), Paper.A4);
    }

    /** The same for these students. */
    public Worksheet forStudents(String... names) {
        return new Worksheet(title, List.of(names), topics, paper);
    }

    /** The same on other paper. */
    public Worksheet on(Paper other) {
        return new Worksheet(title, students, topics, other);
    }

    /** The problems of every student, in the order of the topics. No two students have the same where there are numbers enough. */
    public Map<String, List<Problem>> problems() {
        Map<String, List<Problem>> all = new LinkedHashMap<>();
        students.forEach(s -> all.put(s, new ArrayList<>()));
        for (int i = 0; i < topics.size(); i++) {
            Set<String> taken = new HashSet<>();
            for (String student : students) {
                Random chance = new Random((title + "\n" + student + "\n" + topics.get(i).name() + i).hashCode());
                Problem problem = topics.get(i).problem(chance);
                for (int t = 0; t < TRIES && !taken.add(problem.question()); t++) {
                    problem = topics.get(i).problem(chance);
                }
                taken.add(problem.question());
                all.get(student).add(problem);
            }
        }
        return all;
    }

    /** A page or more for every student, without answers. */
    public Sheaf pages() {
        if (students.isEmpty()) {
            throw new IllegalArgumentException("the worksheet '" + title + "' is for nobody yet; name students with .forStudents(\"…\", \"…\")");
        }
        List<Picture> pages = new ArrayList<>();
        problems().forEach((student, problems) -> {
            PageFlow flow = new PageFlow(paper, title + ", " + student);
            flow.chapter(title + ": " + student);
            flow.paragraph("Seams are 1/4 in. Write how you came by each number, and the number itself below it. The numbers on this sheet are yours alone.");
            for (int i = 0; i < problems.size(); i++) {
                flow.heading((i + 1) + "  " + topics.get(i).title(), 0.6 + ROOM);
                flow.paragraph(problems.get(i).question());
                flow.space(Math.min(ROOM, Math.max(0, flow.room() - 0.3)));
                flow.paragraph("Answer: ______________________________________________");
            }
            pages.addAll(flow.pages());
        });
        return new Sheaf(title, paper, pages);
    }

    /** The teacher's sheet: every student's answers, and how they are come by. */
    public Sheaf answers() {
        PageFlow flow = new PageFlow(paper, title + ", answers");
        flow.chapter(title + ": answers, for the teacher");
        problems().forEach((student, problems) -> {
            Table table = Table.of(student, "No.", "Answer", "How");
            for (int i = 0; i < problems.size(); i++) {
                table = table.row(String.valueOf(i + 1), problems.get(i).answer(), problems.get(i).working());
            }
            flow.heading(student, flow.height(table));
            flow.table(table);
        });
        return new Sheaf(title + ", answers", paper, flow.pages());
    }

    /** The students' pages; the answers are shown by {@link #answers} alone. */
    @Override
    public Exhibit show() {
        return pages().show();
    }
}
