package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class NotebookReaderTest {

    private static Notebook read(String text) throws NotebookException {
        return NotebookReader.read(text.getBytes(StandardCharsets.UTF_8), "oyster-beds.json");
    }

    private static NotebookException refusal(String text) {
        return catchThrowableOfType(NotebookException.class, () -> read(text));
    }

    @Test
    void the_notebook_of_the_design_is_read_and_written_as_it_stands() throws NotebookException {
        String text = """
                {
                  "calicograph": 1,
                  "title": "Oyster Beds",
                  "cells": [
                    {
                      "id": "a1",
                      "kind": "prose",
                      "text": [
                        "# Oyster Beds",
                        "",
                        "Grey on grey."
                      ]
                    },
                    {
                      "id": "a2",
                      "kind": "code",
                      "text": [
                        "int beds = dial(\\"beds\\", 2, 12, 6);"
                      ]
                    }
                  ],
                  "dials": {
                    "beds": 7,
                    "rope": true,
                    "width": "7 3/8 in"
                  },
                  "results": {}
                }
                """;
        Notebook notebook = read(text);
        assertThat(notebook.cells()).containsExactly(Cell.prose("a1", "# Oyster Beds\n\nGrey on grey."),
                Cell.code("a2", "int beds = dial(\"beds\", 2, 12, 6);"));
        assertThat(notebook.dialTexts()).containsEntry("beds", "7").containsEntry("rope", "true").containsEntry("width", "7 3/8 in");
        assertThat(NotebookWriter.write(notebook)).isEqualTo(text);
    }

    @Test
    void fields_that_are_not_known_stay_as_they_were_at_every_level() throws NotebookException {
        String text = """
                {
                  "calicograph": 1,
                  "title": "x",
                  "cells": [
                    {
                      "id": "a1",
                      "kind": "code",
                      "text": [],
                      "folded": true,
                      "tags": {
                        "z": null,
                        "a": [
                          "b"
                        ]
                      }
                    }
                  ],
                  "dials": {},
                  "results": {
                    "a1": {
                      "key": "k",
                      "output": "5",
                      "took": 1.50e+02
                    }
                  },
                  "big": 123456789012345678901234567890.12345678901234567890,
                  "small": -0.0,
                  "far": 1E400,
                  "minus": -0
                }
                """;
        assertThat(NotebookWriter.write(read(text))).isEqualTo(text);
    }

    @Test
    void a_byte_order_mark_is_tolerated() throws NotebookException {
        assertThat(read("\uFEFF{\"calicograph\": 1, \"title\": \"Ropewalk\", \"cells\": []}").title()).isEqualTo("Ropewalk");
    }

    @Test
    void half_a_surrogate_pair_survives() throws NotebookException {
        Notebook notebook = read("{\"calicograph\": 1, \"title\": \"\\ud83d!\", \"cells\": []}");
        assertThat(notebook.title()).isEqualTo("\ud83d!");
        assertThat(NotebookWriter.write(notebook)).contains("\\ud83d!");
    }

    @Test
    void a_wrong_type_is_named_with_its_place_and_repair() {
        NotebookException e = refusal("{\n  \"calicograph\": 1,\n  \"title\": 5,\n  \"cells\": []\n}\n");
        assertThat(e).hasMessage("oyster-beds.json, line 3, column 12: the title is the number 5; make it a text in double quotes");
        assertThat(e.line()).isEqualTo(3);
        assertThat(e.column()).isEqualTo(12);
    }

    @Test
    void a_second_id_names_both_cells() {
        assertThat(refusal("{\"calicograph\": 1, \"title\": \"x\", \"cells\": [\n{\"id\": \"a1\", \"kind\": \"code\", \"text\": []},\n"
                + "{\"id\": \"a1\", \"kind\": \"code\", \"text\": []}]}"))
                .hasMessage("oyster-beds.json, line 3, column 8: cell 2 has the id 'a1', which cell 1 has already; give it another");
    }

    @Test
    void a_missing_field_is_named_with_an_example() {
        assertThat(refusal("{\"calicograph\": 1, \"title\": \"x\", \"cells\": [{\"id\": \"a1\", \"kind\": \"code\"}]}"))
                .hasMessage("oyster-beds.json, line 1, column 44: cell 1 ('a1') has no \"text\"; add \"text\": [\"…\"]");
    }

    @Test
    void a_file_cut_short_says_where_it_ends() {
        assertThat(refusal("{\"calicograph\": 1,\n\"title\": \"x\", \"cells\": [{\"id\": \"a1\", \"ki"))
                .hasMessageStartingWith("oyster-beds.json, line 2, column").hasMessageContaining("the file ends within \"cells\", entry 1");
    }

    @Test
    void bytes_that_are_not_utf_8_are_named_by_their_offset() {
        byte[] bytes = "{\n\"title\": \"T?de\"}".getBytes(StandardCharsets.US_ASCII);
        bytes[13] = (byte) 0xEF;
        assertThat(catchThrowableOfType(NotebookException.class, () -> NotebookReader.read(bytes, "t.json")))
                .hasMessage("t.json, line 2, column 12: byte 13 of the file (hexadecimal ef) is not UTF-8; save the file as UTF-8");
    }

    @Test
    void a_newer_format_is_told_from_a_wrong_one() {
        assertThat(refusal("{\"calicograph\": 2}")).hasMessageContaining("format 2, which is newer");
        assertThat(refusal("{\"calicograph\": \"one\"}")).hasMessageContaining("is the text 'one'; make it 1");
    }

    @Test
    void a_cell_of_a_megabyte_is_read() throws NotebookException {
        String text = "// " + "calico ".repeat(150_000);
        Notebook notebook = Notebook.titled("long", Cell.code("a1", text));
        assertThat(read(NotebookWriter.write(notebook))).isEqualTo(notebook);
    }

    @Test
    void a_result_of_a_cell_that_is_gone_is_left_behind() throws NotebookException {
        assertThat(read("{\"calicograph\": 1, \"title\": \"x\", \"cells\": [], \"results\": {\"a9\": {\"key\": \"k\"}}}").results()).isEmpty();
    }
}
