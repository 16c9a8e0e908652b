package org.calicograph.notebook;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The schema in docs, at work. */
final class NotebookSchema {

    static final Path FILE = Path.of("docs/notebook.schema.json");

    private static final Schema SCHEMA = load();

    private NotebookSchema() { }

    private static Schema load() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(Files.readString(FILE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a validator of JSON Schema (networknt) has against a text; nothing if it conforms. */
    static List<String> objections(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream().map(e -> e.getInstanceLocation() + ": " + e.getMessage()).toList();
    }
}
