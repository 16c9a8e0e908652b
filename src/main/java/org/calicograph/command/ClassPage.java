package org.calicograph.command;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.calicograph.command.output.HtmlFrame;
import org.calicograph.command.output.OutputFiles;
import org.calicograph.course.Finding;
import org.calicograph.course.Season;
import org.calicograph.course.StandingReport;
import org.calicograph.drawing.Picture;

/** A class on one HTML page: first all at a glance, then a sheet for each quilt. */
final class ClassPage {

    /** The longer side of a quilt's picture, in pixels. */
    private static final int PIXELS = 440;

    private static final String STYLE = """
            main { max-width: 62rem; }
            .quilts { margin-top: 2.4rem; display: grid; grid-template-columns: repeat(auto-fill, minmax(18rem, 1fr)); gap: 1.6rem 2rem; }
            .quilt { border-top: 2px solid var(--line); padding-top: .8rem; break-inside: avoid; }
            .quilt img { display: block; max-width: 100%; max-height: 14rem; border-radius: 2px; }
            .quilt h2 { font-size: 1.15rem; margin: .7rem 0 .1rem; } .quilt p { margin: .1rem 0; }
            .quilt ul { margin: .5rem 0; padding-left: 1.1rem; } .quilt li { margin: .25rem 0; }
            .quiet { color: var(--faint); font-size: .92rem; } .mend { color: var(--wrong); }
            td.state { white-space: nowrap; } @media (max-width: 40rem) { td.state span, td.state { font-size: .82rem; } td, th { padding-right: .3rem; } } .none { display: grid; place-items: center; height: 9rem; background: rgba(128, 128, 128, .1); color: var(--faint); }
            """;

    private ClassPage() { }

    static String of(String title, List<Pupil> pupils) {
        StringBuilder out = new StringBuilder(HtmlFrame.head("The class: " + title, STYLE));
        out.append("<h1>The class: ").append(HtmlFrame.escaped(title)).append("</h1>\n");
        out.append("<p>").append(summary(pupils)).append("</p>\n<div class=\"wide\"><table>\n<thead><tr><th scope=\"col\">Maker</th><th scope=\"col\">Quilt</th>");
        for (Season season : Season.values()) {
            out.append("<th scope=\"col\">").append(capital(season.words())).append("</th>");
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (int i = 0; i < pupils.size(); i++) {
            Pupil p = pupils.get(i);
            out.append("<tr><td>").append(HtmlFrame.escaped(maker(p))).append("</td><td><a href=\"#q").append(i).append("\">").append(HtmlFrame.escaped(quilt(p))).append("</a></td>");
            for (Season season : Season.values()) {
                out.append("<td class=\"state\">").append(p.report().map(r -> mark(r.state(season))).orElse("&ndash;")).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table></div>\n<div class=\"quilts\">\n");
        for (int i = 0; i < pupils.size(); i++) {
            sheet(pupils.get(i), i, out);
        }
        return out.append("</div>\n</main>\n</body>\n</html>\n").toString();
    }

    private static String summary(List<Pupil> pupils) {
        StringBuilder out = new StringBuilder(pupils.size() + (pupils.size() == 1 ? " quilt: " : " quilts: "));
        for (Season season : Season.values()) {
            long right = pupils.stream().filter(p -> p.report().map(r -> r.state(season) == Finding.State.RIGHT).orElse(false)).count();
            out.append(right).append(" through ").append(season.words()).append(", ");
        }
        long wrong = pupils.stream().filter(p -> p.report().map(r -> !r.wrong().isEmpty()).orElse(true)).count();
        return out.append(wrong).append(" with something to mend.").toString();
    }

    /** Shape and words, never colour alone. */
    private static String mark(Finding.State state) {
        return switch (state) {
            case RIGHT -> "&#10003; right";
            case WRONG -> "<strong class=\"mend\">&#9650; mend</strong>";
            case OPEN -> "<span class=\"quiet\">&#9675; to do</span>";
        };
    }

    private static String maker(Pupil p) {
        return p.report().map(StandingReport::maker).filter(m -> !m.isEmpty()).orElse(p.file().getFileName().toString().replaceFirst("\\.json$", ""));
    }

    private static String quilt(Pupil p) {
        return p.report().map(StandingReport::title).orElse(p.title());
    }

    private static void sheet(Pupil p, int i, StringBuilder out) {
        out.append("<section class=\"quilt\" id=\"q").append(i).append("\">\n");
        Optional<Picture> picture = p.report().flatMap(StandingReport::picture);
        String alt = HtmlFrame.escaped("'" + quilt(p) + "' by " + maker(p));
        out.append(picture.map(q -> "<img alt=\"" + alt + "\" src=\"data:image/png;base64," + Base64.getEncoder().encodeToString(OutputFiles.png(q, PIXELS)) + "\">\n")
                .orElse("<div class=\"none\">no picture yet</div>\n"));
        out.append("<h2>").append(HtmlFrame.escaped(quilt(p))).append("</h2>\n<p class=\"quiet\">").append(HtmlFrame.escaped(maker(p)))
                .append(p.report().map(StandingReport::size).filter(s -> !s.isEmpty()).map(s -> ", " + HtmlFrame.escaped(s)).orElse(""))
                .append(", ").append(HtmlFrame.escaped(p.file().getFileName().toString())).append("</p>\n");
        if (p.report().isEmpty()) {
            out.append("<p class=\"mend\">").append(p.failures().isEmpty() ? "No standing has been saved in this notebook; draw it, or leave out --unrun."
                    : HtmlFrame.escaped(String.join(" ", p.failures()))).append("</p>\n</section>\n");
            return;
        }
        StandingReport report = p.report().get();
        list(report.wrong(), true, out);
        out.append("<details><summary>All that was looked at</summary>\n");
        list(report.findings().stream().filter(f -> f.state() != Finding.State.WRONG).toList(), false, out);
        out.append("</details>\n</section>\n");
    }

    private static void list(List<Finding> findings, boolean mend, StringBuilder out) {
        if (findings.isEmpty()) {
            return;
        }
        out.append("<ul>\n");
        for (Finding f : findings) {
            out.append("<li>").append(mend ? "<strong class=\"mend\">" : "").append(HtmlFrame.escaped(capital(f.what()))).append(mend ? "</strong>" : "")
                    .append(mend ? ": " : " (" + f.state().words() + "): ").append(HtmlFrame.escaped(f.words())).append("</li>\n");
        }
        out.append("</ul>\n");
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
