package org.calicograph.command.output;

/** How every HTML page begins: its look, by day and by night, on a phone and on paper, and its policy. */
public final class HtmlFrame {

    /** Nothing is fetched from anywhere, whatever a page holds. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:";

    private static final String STYLE = """
            :root { --ink: #23303a; --faint: #5d6b74; --paper: #fcfaf5; --line: #d9d3c5; --accent: #2f6f8f; --wrong: #9b3d2a; }
            @media (prefers-color-scheme: dark) {
              :root { --ink: #e7e3d8; --faint: #a4aeb4; --paper: #1d2429; --line: #3a444b; --accent: #8cc3dc; --wrong: #f0a08c; } }
            body { margin: 0; background: var(--paper); color: var(--ink); font: 1.05rem/1.6 Georgia, 'Liberation Serif', serif; }
            main { max-width: 46rem; margin: 0 auto; padding: 2.5rem 1.25rem 5rem; }
            h1, h2, h3 { line-height: 1.2; font-weight: 600; margin: 2.2rem 0 .7rem; }
            h1 { font-size: 2rem; } h2 { font-size: 1.45rem; } h3 { font-size: 1.15rem; }
            a { color: var(--accent); }
            figure { margin: 1.4rem 0; text-align: center; }
            figure svg { max-width: 100%; max-height: 42rem; height: auto; background: #fff; border-radius: 3px; }
            figcaption { color: var(--faint); font-size: .9rem; margin-top: .5rem; }
            table { border-collapse: collapse; margin: 1.2rem 0; font-size: .95rem; width: 100%; }
            caption { text-align: left; font-weight: 600; padding-bottom: .3rem; }
            th, td { padding: .3rem .7rem .3rem 0; border-bottom: 1px solid var(--line); text-align: left; vertical-align: top; }
            td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; }
            pre { background: rgba(128, 128, 128, .1); padding: .8rem 1rem; overflow-x: auto; font: .85rem/1.5 'DejaVu Sans Mono', Menlo, monospace; border-radius: 3px; }
            details { margin: .4rem 0 1rem; } summary { color: var(--faint); font-size: .85rem; cursor: pointer; }
            .wrong { border-left: 3px solid var(--wrong); padding-left: .8rem; color: var(--wrong); }
            .dials { color: var(--faint); font-size: .9rem; }
            .wide { overflow-x: auto; } .wide td { min-width: 4rem; }
            .row { display: flex; flex-wrap: wrap; gap: 0 1.2rem; } .row figure { flex: 1 1 9rem; }
            tr.done td { text-decoration: line-through; opacity: .6; }
            tr:focus-visible { outline: 2px solid var(--accent); }
            @media (max-width: 30rem) { main { padding: 1rem .8rem 4rem; } h1 { font-size: 1.5rem; } table { font-size: .9rem; } th, td { padding-right: .45rem; } tbody td { padding-top: .55rem; padding-bottom: .55rem; } }
            @page { margin: 15mm; }
            @media print { :root { --ink: #000; --faint: #333; --paper: #fff; } details, .screen { display: none; } main { max-width: none; padding: 0; }
              figure, tr { break-inside: avoid; } tr.done td { text-decoration: none; opacity: 1; }
              figure.sheet { break-before: page; break-after: page; margin: 0; }
              figure.sheet svg { display: block; width: var(--width); height: var(--height); max-width: none; max-height: none; } figure.sheet figcaption { display: none; } }
            """;

    private HtmlFrame() { }

    /** The beginning of a page, up to its main part: nothing in it is fetched from anywhere. */
    public static String head(String title, String more) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\">\n"
                + "<title>" + escaped(title) + "</title>\n<style>\n" + STYLE + more + "</style>\n</head>\n<body>\n<main>\n";
    }

    /** A text as it stands in a page, also within quotes. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
