package org.calicograph.reference;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.calicograph.command.output.HtmlFrame;

/** The reference as one HTML page, with a field to find a word. */
public final class WordsPage {

    private static final String STYLE = """
            main { max-width: 58rem; } .find { position: sticky; top: 0; background: var(--paper); padding: .8rem 0; } .find input { width: 100%; font: inherit; padding: .4rem .6rem; border: 1px solid var(--line); background: transparent; color: inherit; }
            section.room > p { color: var(--faint); } .type { border-top: 2px solid var(--line); padding-top: .4rem; margin-top: 1.6rem; } .type h3 { margin: .6rem 0 .2rem; }
            .form { font: .85rem/1.5 'DejaVu Sans Mono', Menlo, monospace; overflow-wrap: anywhere; } dt { margin-top: .7rem; } dd { margin: .1rem 0 0 1.4rem; } .refuses { color: var(--wrong); }
            .hidden { display: none; } nav a { margin-right: .8rem; }
            """;

    private static final String FINDING = """
            const field = document.querySelector('.find input');
            field.addEventListener('input', () => {
              const wanted = field.value.trim().toLowerCase();
              document.querySelectorAll('.type').forEach(type => {
                const named = type.dataset.name.includes(wanted);
                let any = named;
                type.querySelectorAll('[data-word]').forEach(word => {
                  const hit = named || word.dataset.word.includes(wanted);
                  word.classList.toggle('hidden', wanted !== '' && !hit);
                  any = any || hit;
                });
                type.classList.toggle('hidden', wanted !== '' && !any);
              });
            });
            """;

    private WordsPage() { }

    /**
     * @param examples working lines, by the title of the notebook that they stand in
     */
    public static String of(List<Room> rooms, Map<String, List<String>> examples) {
        StringBuilder out = new StringBuilder(HtmlFrame.head("The words of a notebook", STYLE));
        out.append("<h1>The words of a notebook</h1>\n<p>Everything that a cell can say, by what it is for. Angles and lengths are values of their own: <code>inches(6)</code>, <code>inches(\"3 1/8\")</code>, "
                + "<code>cm(20)</code>, <code>degrees(45)</code>.</p>\n<div class=\"find\"><input type=\"search\" aria-label=\"find a word\" placeholder=\"find a word\"></div>\n<nav>");
        rooms.forEach(r -> out.append("<a href=\"#").append(r.name()).append("\">").append(r.name()).append("</a> "));
        out.append("</nav>\n");
        for (Room room : rooms) {
            out.append("<section class=\"room\" id=\"").append(room.name()).append("\">\n<h2>").append(room.name()).append("</h2>\n");
            paragraphs(room.about(), out);
            room.types().forEach(t -> type(t, examples, out));
            out.append("</section>\n");
        }
        return out.append("</main>\n<script>\n").append(FINDING).append("</script>\n</body>\n</html>\n").toString();
    }

    private static void type(Word type, Map<String, List<String>> examples, StringBuilder out) {
        out.append("<div class=\"type\" id=\"w-").append(type.name()).append("\" data-name=\"").append(type.name().toLowerCase(java.util.Locale.ROOT)).append("\">\n<h3>").append(type.name()).append("</h3>\n");
        body(type, out);
        String example = shortest(examples, type.name());
        if (!example.isEmpty()) {
            out.append("<details><summary>Where it is used</summary><pre>").append(HtmlFrame.escaped(example)).append("</pre></details>\n");
        }
        words(type, out);
        out.append("</div>\n");
    }

    private static void words(Word type, StringBuilder out) {
        if (!type.words().isEmpty()) {
            out.append("<dl>\n");
            for (Word word : type.words()) {
                out.append("<div data-word=\"").append(word.name().toLowerCase(java.util.Locale.ROOT)).append("\"><dt class=\"form\">").append(HtmlFrame.escaped(word.words().isEmpty() && word.form().contains("(")
                        || !word.form().isEmpty() && word.form().endsWith(word.name()) ? word.form() : type.name() + "." + word.name())).append("</dt><dd>\n");
                body(word.words().isEmpty() ? new Word(word.name(), "", word.about(), word.parts(), word.errors(), List.of()) : word, out);
                words(word, out);
                out.append("</dd></div>\n");
            }
            out.append("</dl>\n");
        }
    }

    private static void body(Word word, StringBuilder out) {
        paragraphs(word.about(), out);
        if (!word.form().isEmpty() && !word.form().contains("(")) {
            out.append("<p class=\"form\">").append(HtmlFrame.escaped(word.form())).append("</p>\n");
        }
        if (!word.parts().isEmpty()) {
            out.append("<ul>\n");
            word.parts().forEach(p -> out.append("<li><span class=\"form\">").append(HtmlFrame.escaped(p.get(0))).append("</span> ").append(HtmlFrame.escaped(p.get(1))).append("</li>\n"));
            out.append("</ul>\n");
        }
        if (!word.errors().isEmpty()) {
            out.append("<p class=\"refuses\">Refuses: ").append(HtmlFrame.escaped(word.errors())).append("</p>\n");
        }
    }

    private static void paragraphs(String text, StringBuilder out) {
        for (String each : text.split("\n\n+")) {
            if (!each.isBlank()) {
                out.append("<p>").append(HtmlFrame.escaped(each.strip())).append("</p>\n");
            }
        }
    }

    /** The shortest working lines that use a name. */
    private static String shortest(Map<String, List<String>> examples, String name) {
        Pattern used = Pattern.compile("\\b" + name + "\\b");
        String best = "";
        for (Map.Entry<String, List<String>> notebook : examples.entrySet()) {
            for (String text : notebook.getValue()) {
                if (used.matcher(text).find() && (best.isEmpty() || text.length() < best.length() - 20)) {
                    best = text + "\n// from '" + notebook.getKey() + "'";
                }
            }
        }
        return best;
    }
}
