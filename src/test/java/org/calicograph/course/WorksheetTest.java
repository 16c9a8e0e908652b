package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.calicograph.book.Sheaf;
import org.calicograph.drawing.Paper;
import org.junit.jupiter.api.Test;

class WorksheetTest {

    private static final String[] CLASS = {"Hesper", "Marn", "Odile", "Brannoch", "Sunniva", "Tamsin", "Ferris", "Ivo", "Linnet", "Perrin", "Quill", "Rowan"};

    @Test
    void every_student_has_numbers_of_her_own() {
        Worksheet sheet = Worksheet.of("Borders", Topic.values()).forStudents(CLASS);
        for (int t = 0; t < Topic.values().length; t++) {
            Set<String> questions = new HashSet<>();
            for (List<Problem> own : sheet.problems().values()) {
                assertTrue(questions.add(own.get(t).question()), "two have: " + own.get(t).question());
            }
        }
    }

    @Test
    void a_lost_sheet_is_printed_again_as_it_was() {
        Worksheet sheet = Worksheet.of("Borders", Topic.BORDER_STRIPS, Topic.BINDING).forStudents(CLASS);
        assertEquals(sheet.problems(), Worksheet.of("Borders", Topic.BORDER_STRIPS, Topic.BINDING).forStudents(CLASS).problems());
    }

    @Test
    void answers_stand_on_the_teachers_sheet_alone() throws IOException {
        Worksheet sheet = Worksheet.of("Borders", Topic.BORDER_STRIPS, Topic.BINDING, Topic.BACKING).forStudents(CLASS).on(Paper.LETTER);
        String students = text(sheet.pages());
        String teacher = text(sheet.answers());
        sheet.problems().forEach((student, problems) -> problems.forEach(p -> {
            String answer = p.answer().replaceAll("\\s+", " ");
            assertFalse(students.contains(answer), answer);
            assertTrue(teacher.contains(answer.substring(0, 12)), answer);
            assertTrue(students.contains(p.question().substring(0, 40)), p.question());
        }));
    }

    @Test
    void a_sheet_without_students_topics_or_with_one_student_twice_is_refused_with_the_repair() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Worksheet.of("Borders", Topic.BINDING).pages()).getMessage().contains("forStudents"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Worksheet.of("Borders")).getMessage().contains("name a topic"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Worksheet.of("Borders", Topic.BINDING).forStudents("Ivo", "Ivo")).getMessage().contains("'Ivo' twice"));
    }

    private static String text(Sheaf sheaf) throws IOException {
        try (var document = Loader.loadPDF(sheaf.pdf())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }
}
