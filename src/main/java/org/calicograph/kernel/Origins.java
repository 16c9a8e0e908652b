package org.calicograph.kernel;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis;
import org.calicograph.wire.Place;

/** Leads from a line of a compiled class back to the line of the cell. */
final class Origins {

    private record Origin(Piece piece, SourceCodeAnalysis.SnippetWrapper wrapper) { }

    private final Map<String, Origin> known = new HashMap<>();

    void add(Piece piece, SourceCodeAnalysis analysis) {
        for (Snippet snippet : piece.snippets) {
            if (snippet.kind() != Snippet.Kind.IMPORT && snippet.kind() != Snippet.Kind.ERRONEOUS) {
                SourceCodeAnalysis.SnippetWrapper wrapper = analysis.wrapper(snippet);
                known.put(wrapper.fullClassName(), new Origin(piece, wrapper));
            }
        }
    }

    void forget(String cell) {
        known.values().removeIf(o -> o.piece.cell().equals(cell));
    }

    private Optional<Origin> origin(String className) {
        String name = className;
        while (true) {
            Origin origin = known.get(name);
            if (origin != null) {
                return Optional.of(origin);
            }
            int inner = name.lastIndexOf('$');
            if (inner < 0) {
                return Optional.empty();
            }
            name = name.substring(0, inner);
        }
    }

    /** The piece that a compiled class came from. */
    Optional<Piece> piece(String className) {
        return origin(className).map(Origin::piece);
    }

    /** The place in the cell for a line of a compiled class. */
    Optional<Place> place(String className, int line, String cellText) {
        return origin(className).map(origin -> {
            String wrapped = origin.wrapper.wrapped();
            int start = 0;
            for (int i = 1; i < line && start >= 0; i++) {
                start = wrapped.indexOf('\n', start) + 1;
            }
            int end = wrapped.indexOf('\n', start);
            end = end < 0 ? wrapped.length() : end;
            String source = origin.piece.source();
            int inSource = -1;
            for (int i = start; i < end && (inSource < 0 || inSource >= source.length() || Character.isWhitespace(source.charAt(inSource))); i++) {
                inSource = origin.wrapper.wrappedToSourcePosition(i);
            }
            inSource = Math.max(0, Math.min(inSource, source.length()));
            while (inSource < source.length() - 1 && Character.isWhitespace(source.charAt(inSource))) {
                inSource++;
            }
            return Place.of(cellText, origin.piece.offset() + inSource);
        });
    }
}
