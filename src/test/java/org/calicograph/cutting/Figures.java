package org.calicograph.cutting;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Published figures kept beside the tests; each row names its source. */
public final class Figures {

    private Figures() { }

    public static List<Map<String, String>> of(String name) {
        try (InputStream in = Figures.class.getResourceAsStream(name + ".csv")) {
            return new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader())
                    .<Map<String, String>>readValues(in).readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
