package org.calicograph.desk.cells;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.calicograph.session.Completions;
import org.calicograph.wire.Problem;
import org.calicograph.wire.Signature;

/** What the kernel knows of a text that is being written. Nothing is drawn for it; there is none without a kernel. */
public interface Advice {

    CompletableFuture<Completions> complete(String cell, String text, int offset);

    CompletableFuture<List<Signature>> explain(String cell, String text, int offset);

    /** What the compiler will object to. */
    CompletableFuture<List<Problem>> check(String cell, String text);
}
