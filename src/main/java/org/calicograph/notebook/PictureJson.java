package org.calicograph.notebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Tag;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Transform;

/**
 * A picture as it is saved: {@code {"paths": ["M 0 0 L 1 0 …"], "fill": "#1f3a5f", "pen": {…}}},
 * {@code {"lettering": "A", "at": [0, 0], …}} or {@code {"parts": […], "id": …, "title": …, "role": …, "said": …}}.
 */
final class PictureJson {

    private PictureJson() { }

    static Json write(Picture picture) {
        Map<String, Json> fields = new LinkedHashMap<>();
        if (picture instanceof Picture.Shape shape) {
            fields.put("paths", new Json.Arr(shape.paths().stream().map(p -> Json.of(PathText.write(p))).toList()));
            // A print is saved as the colour it reads as: photographs would swell the file.
            if (shape.fill().plain() instanceof Paint.Flat flat) {
                fields.put("fill", Json.of(flat.colour().hex()));
                if (flat.opacity() < 1) {
                    fields.put("opacity", number(flat.opacity()));
                }
            }
            if (shape.pen().draws()) {
                fields.put("pen", pen(shape.pen()));
            }
        } else if (picture instanceof Picture.Lettering text) {
            fields.put("lettering", Json.of(text.text()));
            fields.put("at", numbers(text.at().x(), text.at().y()));
            fields.put("size", number(text.size()));
            fields.put("anchor", Json.of(text.anchor().name().toLowerCase(java.util.Locale.ROOT)));
            if (text.weight() == Picture.Weight.BOLD) {
                fields.put("bold", new Json.Bool(true));
            }
            fields.put("colour", Json.of(text.colour().hex()));
        } else if (picture instanceof Picture.Group group) {
            group.label().ifPresent(label -> {
                fields.put("id", Json.of(label.id()));
                fields.put("title", Json.of(label.title()));
            });
            group.tag().ifPresent(tag -> {
                fields.put("role", Json.of(word(tag.role())));
                if (!tag.said().isEmpty()) {
                    fields.put("said", Json.of(tag.said()));
                }
                if (tag.continued()) {
                    fields.put("continued", new Json.Bool(true));
                }
            });
            Transform t = group.transform();
            if (!t.equals(Transform.IDENTITY)) {
                fields.put("transform", numbers(t.a(), t.b(), t.c(), t.d(), t.e(), t.f()));
            }
            fields.put("parts", new Json.Arr(group.parts().stream().map(PictureJson::write).toList()));
        }
        return new Json.Obj(fields);
    }

    private static Json pen(Pen pen) {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("colour", Json.of(pen.colour().hex()));
        fields.put("width", number(pen.width()));
        if (!pen.dashes().isEmpty()) {
            fields.put("dashes", new Json.Arr(pen.dashes().stream().map(PictureJson::number).toList()));
        }
        return new Json.Obj(fields);
    }

    private static Json number(double value) {
        return new Json.Num(PathText.number(value));
    }

    private static Json numbers(double... values) {
        List<Json> all = new ArrayList<>();
        for (double value : values) {
            all.add(number(value));
        }
        return new Json.Arr(all);
    }

    static Picture read(JsonNode node) {
        try {
            if (node.object().get("paths").isPresent()) {
                return shape(node);
            } else if (node.object().get("lettering").isPresent()) {
                return lettering(node);
            }
            return group(node);
        } catch (IllegalArgumentException e) {
            throw node.flaw(node.what() + " can't be drawn: " + Excerpt.of(e.getMessage(), 200));
        }
    }

    private static Picture shape(JsonNode node) {
        var paths = node.required("paths", "[\"M 0 0 L 1 1\"]").items().stream().map(p -> PathText.read(p.text())).toList();
        Paint fill = node.optional("fill").map(f -> Paint.of(Colour.hex(f.text()),
                node.optional("opacity").map(JsonNode::number).orElse(1.0))).orElse(Paint.NONE);
        return new Picture.Shape(paths, fill, node.optional("pen").map(PictureJson::pen).orElse(Pen.NONE));
    }

    private static Pen pen(JsonNode node) {
        return new Pen(Colour.hex(node.required("colour", "\"#3b3a38\"").text()), node.required("width", "0.02").number(),
                node.optional("dashes").map(d -> d.items().stream().map(JsonNode::number).toList()).orElse(List.of()));
    }

    private static Picture lettering(JsonNode node) {
        List<Double> at = numbers(node.required("at", "[0, 0]"), 2);
        String anchor = node.required("anchor", "\"start\", \"middle\" or \"end\"").text();
        Picture.Anchor known = switch (anchor) {
            case "start" -> Picture.Anchor.START;
            case "middle" -> Picture.Anchor.MIDDLE;
            case "end" -> Picture.Anchor.END;
            default -> throw node.required("anchor", "").wrong("\"start\", \"middle\" or \"end\"");
        };
        boolean bold = node.optional("bold").map(JsonNode::flag).orElse(false);
        return new Picture.Lettering(node.required("lettering", "").text(), new Point(at.get(0), at.get(1)),
                node.required("size", "0.25").number(), known, bold ? Picture.Weight.BOLD : Picture.Weight.REGULAR,
                Colour.hex(node.required("colour", "\"#2b2b2b\"").text()));
    }

    private static Picture group(JsonNode node) {
        List<Picture> parts = node.required("parts", "[]").items().stream().map(PictureJson::read).toList();
        Transform t = node.optional("transform").map(n -> {
            List<Double> v = numbers(n, 6);
            return new Transform(v.get(0), v.get(1), v.get(2), v.get(3), v.get(4), v.get(5));
        }).orElse(Transform.IDENTITY);
        Optional<Picture.Label> label = node.optional("id").map(id ->
                new Picture.Label(id.text(), node.optional("title").map(JsonNode::text).orElse("")));
        return new Picture.Group(parts, t, label, node.optional("role").map(role -> tag(node, role)));
    }

    private static Tag tag(JsonNode node, JsonNode name) {
        Tag.Role role = Arrays.stream(Tag.Role.values()).filter(r -> word(r).equals(name.text())).findFirst()
                .orElseThrow(() -> name.wrong("\"paragraph\", \"figure\" or another part of a page"));
        String said = node.optional("said").map(JsonNode::text).orElse("");
        if (role == Tag.Role.FIGURE && said.isBlank()) {
            throw node.wrong("a figure with \"said\", words for whoever can't see it");
        }
        return new Tag(role, said, node.optional("continued").map(JsonNode::flag).orElse(false));
    }

    private static String word(Tag.Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }

    private static List<Double> numbers(JsonNode node, int count) {
        List<Double> all = node.items().stream().map(JsonNode::number).toList();
        if (all.size() != count) {
            throw node.flaw(node.what() + " has " + all.size() + " numbers; give it " + count);
        }
        return all;
    }
}
