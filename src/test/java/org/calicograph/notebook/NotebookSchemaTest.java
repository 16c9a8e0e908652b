package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NotebookSchemaTest {

    /** What a schema can't say; the first words of the case's name. */
    private static final List<String> BEYOND = List.of("two cells with one id", "a field twice", "a dial twice", "a name of a megabyte twice", "deep within",
            "the saved exhibit {\"table\": {\"columns\": [\"x\"], \"rows\": [[]]}}", "the saved exhibit {\"picture\": {\"paths\": [\"M 0 0 A 0 1 1\"]}}",
            "the saved exhibit {\"picture\": {\"parts\": [], \"transform\": [1, 0, 0, 1, 1e999, 0]}}");

    @Test
    void the_schema_is_valid_json_in_the_notebooks_own_style() throws IOException {
        String text = Files.readString(NotebookSchema.FILE);
        assertThat(JsonReader.read(text).json()).isInstanceOf(Json.Obj.class);
    }

    @Test
    void what_the_schema_names_comes_first_in_a_file() throws IOException {
        String text = Files.readString(NotebookSchema.FILE);
        Set<String> named = JsonReader.read(text).required("properties", "").object().fields().keySet();
        assertThat(named).containsExactly("calicograph", "title", "cells", "dials", "results");
    }

    @Test
    void every_hostile_notebook_in_json_is_refused_by_the_schema_too() {
        JsonMapper mapper = JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();
        List<String> accepted = new ArrayList<>();
        int refused = 0;
        for (Map.Entry<String, byte[]> each : HostileNotebooks.all().entrySet()) {
            String text = new String(each.getValue(), StandardCharsets.UTF_8);
            if (!Arrays.equals(text.getBytes(StandardCharsets.UTF_8), each.getValue())) {
                continue; // not UTF-8, so no JSON
            }
            try {
                if (mapper.readTree(text).isMissingNode()) {
                    continue;
                }
            } catch (JsonProcessingException e) {
                continue;
            }
            if (!NotebookSchema.objections(text).isEmpty()) {
                refused++;
            } else if (BEYOND.stream().noneMatch(each.getKey()::startsWith)) {
                accepted.add(each.getKey());
            }
        }
        assertThat(accepted).isEmpty();
        assertThat(refused).isGreaterThan(70);
    }

    @Test
    void every_notebook_of_the_product_conforms_and_is_written_as_it_stands() throws IOException {
        Path folder = Path.of("notebooks");
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
                String text = Files.readString(file);
                assertThat(NotebookSchema.objections(text)).as(file.toString()).isEmpty();
                assertThat(NotebookWriter.write(NotebookFile.read(file))).as(file.toString()).isEqualTo(text);
            }
        }
    }
}
