package org.calicograph.fabric;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.List;

/** Rows of words as comma-separated values (RFC 4180): fields quoted where they need it, each line ended by CR LF. */
public final class CommaLines {

    private static final ObjectWriter WRITER = CsvMapper.builder().enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING).build()
            .writerFor(String[].class).with(CsvSchema.emptySchema().withLineSeparator("\r\n"));

    private CommaLines() { }

    /** @param rows of any length; no field is null */
    public static String of(List<List<String>> rows) {
        StringBuilder out = new StringBuilder();
        for (List<String> row : rows) {
            try {
                out.append(WRITER.writeValueAsString(row.toArray(String[]::new)));
            } catch (JsonProcessingException e) {
                throw new IllegalArgumentException("a row of " + row.size() + " words can't be written: " + e.getOriginalMessage(), e);
            }
        }
        return out.toString();
    }
}
