package org.calicograph.fabric;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.HashSet;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;

/**
 * A stash as it was read, and what could not be read of it.
 *
 * <p>The text is comma-separated values (RFC 4180) with a heading line. Columns, in any order:
 * {@code name} and {@code colour} (#1f3a5f) must be there; {@code print} (plain, small, medium, large),
 * {@code direction} (any, two-way, one-way), {@code width} (a length), {@code in hand} (a length off
 * the bolt, or an area as {@code 120 sq in}; empty for as much as needed) and {@code price}
 * ({@code 11.50 EUR per m} or {@code per yd}) may be.
 *
 * @param stash    the rows that could be read
 * @param problems one for each that could not, naming its line, the value and the repair
 */
public record StashReading(Stash stash, List<String> problems) {

    private static final List<String> COLUMNS = List.of("name", "colour", "print", "direction", "width", "in hand", "price");
    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvParser.Feature.WRAP_AS_ARRAY, CsvParser.Feature.SKIP_EMPTY_LINES, CsvParser.Feature.TRIM_SPACES).build();

    public StashReading {
        problems = List.copyOf(problems);
    }

    /** @throws IllegalArgumentException if the heading line lacks a name or a colour */
    public static StashReading of(String csv) {
        List<Fabric> fabrics = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Set<String> names = new HashSet<>();
        String text = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        try (MappingIterator<String[]> rows = MAPPER.readerFor(String[].class).readValues(text)) {
            List<String> heading = heading(rows.hasNext() ? rows.next() : new String[0], problems);
            while (rows.hasNextValue()) {
                int line = rows.getCurrentLocation().getLineNr();
                String[] row = rows.nextValue();
                if (row.length == 1 && row[0].isBlank()) {
                    continue;
                }
                try {
                    Fabric fabric = fabric(heading, row);
                    if (!names.add(fabric.name())) {
                        throw new IllegalArgumentException("'" + fabric.name() + "' stands in an earlier row too; name them apart");
                    }
                    fabrics.add(fabric);
                } catch (IllegalArgumentException | ArithmeticException e) {
                    problems.add("line " + line + ": " + e.getMessage());
                }
            }
        } catch (JsonProcessingException e) {
            problems.add("line " + (e.getLocation() == null ? 1 : e.getLocation().getLineNr())
                    + ": the rest can't be read, since a quotation mark is not closed or followed by other text; close it");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new StashReading(Stash.of(fabrics), problems);
    }

    private static List<String> heading(String[] row, List<String> problems) {
        List<String> heading = Arrays.stream(row).map(h -> h.trim().toLowerCase(Locale.ROOT)).toList();
        for (String h : heading) {
            if (!COLUMNS.contains(h)) {
                problems.add("line 1: there is no column '" + h + "' in a stash" + NearestNames.question(h, COLUMNS));
            }
        }
        for (String needed : List.of("name", "colour")) {
            if (!heading.contains(needed)) {
                throw new IllegalArgumentException("the stash has no column '" + needed + "' in its first line, which reads '"
                        + String.join(",", row) + "'; write one such as 'name,colour,in hand'");
            }
        }
        return heading;
    }

    private static Fabric fabric(List<String> heading, String[] row) {
        if (row.length > heading.size()) {
            throw new IllegalArgumentException("the row has " + row.length + " fields under " + heading.size()
                    + " headings; put a text that has commas in quotation marks");
        }
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < row.length; i++) {
            fields.put(heading.get(i), row[i].trim());
        }
        String name = fields.getOrDefault("name", "");
        if (name.isEmpty()) {
            throw new IllegalArgumentException("the row has no name; give the fabric one");
        }
        String where = "'" + name + "': ";
        try {
            return filled(Fabric.of(name, fields.getOrDefault("colour", "")), fields);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(e.getMessage().startsWith("'" + name + "'") ? e.getMessage() : where + e.getMessage(), e);
        }
    }

    private static Fabric filled(Fabric bare, Map<String, String> fields) {
        Fabric fabric = bare;
        String scale = fields.getOrDefault("print", "");
        String way = fields.getOrDefault("direction", "");
        if (!scale.isEmpty() || !way.isEmpty()) {
            fabric = fabric.printed(Print.of(choice("print", scale.isEmpty() ? "plain" : scale, Print.Scale.values()))
                    .running(choice("direction", way.isEmpty() ? "any" : way, Print.Direction.values())));
        }
        String width = fields.getOrDefault("width", "");
        if (!width.isEmpty()) {
            fabric = fabric.wide(Length.parse(width));
        }
        String amount = fields.getOrDefault("in hand", "");
        if (!amount.isEmpty()) {
            fabric = fabric.inHand(amount(amount));
        }
        String price = fields.getOrDefault("price", "");
        return price.isEmpty() ? fabric : fabric.at(price(price));
    }

    private static <E extends Enum<E>> E choice(String column, String text, E[] values) {
        List<String> words = Arrays.stream(values).map(StashReading::word).toList();
        int i = words.indexOf(text.toLowerCase(Locale.ROOT).replace(' ', '-'));
        if (i < 0) {
            throw new IllegalArgumentException("'" + text + "' is no " + column + "; use " + String.join(", ", words));
        }
        return values[i];
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static InHand amount(String text) {
        String t = text.toLowerCase(Locale.ROOT);
        if (!t.contains("sq")) {
            return InHand.of(Length.parse(text));
        }
        String[] words = t.replaceFirst("^([-0-9.]+)\\s*sq\\s*(in|cm)$", "$1 $2").split(" ");
        try {
            double number = Double.parseDouble(words[0]);
            return InHand.of(new Area(words[1].equals("cm") ? number / 6.4516 : number));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            throw new IllegalArgumentException("'" + text + "' is not an area; write it like 120 sq in or 800 sq cm", e);
        }
    }

    private static Price price(String text) {
        String[] words = text.split("\\s+");
        if (words.length != 4 || !words[2].equals("per") || !words[3].matches("m|yd")) {
            throw new IllegalArgumentException("'" + text + "' is not a price; write it like 11.50 EUR per m or 9 GBP per yd");
        }
        return words[3].equals("m") ? Price.perMetre(words[0], words[1]) : Price.perYard(words[0], words[1]);
    }

    static String write(Stash stash) {
        List<List<String>> lines = new ArrayList<>(List.of(List.copyOf(COLUMNS)));
        for (Fabric f : stash.fabrics()) {
            lines.add(List.of(f.name(), f.colour().hex(), word(f.print().scale()), word(f.print().direction()),
                    f.usableWidth().text(), written(f.inHand()), f.price().map(Price::toString).orElse("")));
        }
        return CommaLines.of(lines);
    }

    private static String written(InHand amount) {
        if (amount instanceof InHand.OffTheBolt bolt) {
            return bolt.length().text();
        }
        return amount instanceof InHand.Scraps s ? BigDecimal.valueOf(s.pieces().squareInches()).toPlainString() + " sq in" : "";
    }
}
