package org.calicograph.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.calicograph.colour.ColourName;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Said;
import org.calicograph.drawing.Tag;
import org.calicograph.piecing.Chain;
import org.calicograph.piecing.Stage;
import org.calicograph.quilt.Quilt;

/** The booklet's drawings with words for whoever can't see them, taken from the plan that is drawn. */
final class Described {

    private Described() { }

    private static Picture figure(String words, Picture picture) {
        return picture.tagged(Tag.of(Tag.Role.FIGURE, words));
    }

    static Picture quilt(Quilt quilt, String size, Picture picture) {
        String bound = quilt.binding().map(b -> ", bound in " + b.name()).orElse("");
        return figure(Said.of("The quilt " + quilt.title() + ", " + size + " finished" + bound, picture), picture);
    }

    static Picture swatch(FabricCut f, Picture picture) {
        return figure("A swatch of " + f.name() + ": " + ColourName.of(f.fabric().colour()), picture);
    }

    static Picture lines(int patches, Picture picture) {
        return figure("The quilt in lines alone, to colour in: the outlines of " + patches + (patches == 1 ? " patch" : " patches"), picture);
    }

    /** What is cut from a cloth, and from how much of it. */
    static Picture layout(FabricCut f, CuttingRules rules, Picture picture) {
        String pieces = f.pieces().stream().map(p -> p.count() + " " + p.letter()).collect(Collectors.joining(", "));
        String more = f.finish().stream().map(Blank::name).distinct().collect(Collectors.joining(", "));
        String all = pieces.isEmpty() || more.isEmpty() ? pieces + more : pieces + ", and " + more;
        return figure("How it is laid and cut from " + f.caption(rules) + ", " + rules.text(f.layout().width()) + " usable width. Cut from it: " + all, picture);
    }

    static Picture label(Piece p, Picture picture) {
        return figure("A label to cut out: " + p.letter() + ", " + p.fabric().name() + ", " + p.count() + (p.count() == 1 ? " piece" : " pieces"), picture);
    }

    /** Its parts by their letters or names, and how many there are of each. */
    static Picture apart(Stage s, Picture picture) {
        Map<String, Integer> parts = new LinkedHashMap<>();
        s.letters().values().forEach(l -> parts.merge(l, 1, Integer::sum));
        String told = parts.entrySet().stream().sorted(Map.Entry.comparingByKey()).map(e -> e.getValue() + " " + e.getKey()).collect(Collectors.joining(", "));
        return figure(s.name() + " drawn apart: " + told, picture);
    }

    static Picture pressed(Stage s, Picture picture) {
        int seams = s.pressing().seams().size();
        return figure(s.name() + " whole, with " + (seams == 1 ? "an arrow across its seam" : seams + " arrows across its seams") + " for the way to press", picture);
    }

    static Picture step(Chain c, Picture picture) {
        return figure("Step " + c.number() + ", drawn a little apart: " + c.what() + " make " + c.name(), picture);
    }

    static Picture placement(String name, int shapes, Picture picture) {
        return figure("Where the shapes of " + name + " lie, numbered from 1 to " + shapes + " in the order of laying", picture);
    }

    static Picture card(Picture picture) {
        return figure(Said.of("A card to cut out", picture), picture);
    }
}
