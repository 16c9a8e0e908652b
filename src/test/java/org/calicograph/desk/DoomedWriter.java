package org.calicograph.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.SessionOptions;

/**
 * The desk's papers in a process of their own, without a window: takes up what was left, then writes one numbered line
 * after another into the passage {@code p1}, tells of each when it stands there, and saves now and then. Goes on until
 * it is killed.
 */
final class DoomedWriter implements Papers.Table {

    private final NoticeBar notices = new NoticeBar();
    private OpenNotebook opened = new OpenNotebook(Notebook.titled(""));
    private final Papers papers;

    private DoomedWriter(Path own) {
        papers = new Papers(this, notices, new DeskOptions(own, own, SessionOptions.standard()));
    }

    /** {@code OWN FILE SAVES}: saves every so many lines, 0 for never. */
    public static void main(String[] arguments) throws Exception {
        CountDownLatch began = new CountDownLatch(1);
        Platform.startup(began::countDown);
        began.await();
        int saves = Integer.parseInt(arguments[2]);
        DoomedWriter writer = Evening.onFx(() -> new DoomedWriter(Path.of(arguments[0])));
        Evening.onFx(() -> {
            writer.papers.open(Path.of(arguments[1]));
            press(writer.notices, "Take it up");
            return null;
        });
        for (int lines = 1;; lines++) {
            boolean save = saves > 0 && lines % saves == 0;
            int number = Evening.onFx(() -> writer.writeOn(save));
            System.out.println(number + " " + System.currentTimeMillis());
            LockSupport.parkNanos(12_000_000);
        }
    }

    private int writeOn(boolean save) {
        String text = opened.notebook().cell("p1").orElseThrow().text();
        int number = KeptThroughKillsTest.lines(text) + 1;
        opened.setText("p1", text + (text.isEmpty() ? "" : "\n") + KeptThroughKillsTest.line(number));
        if (save) {
            papers.save(Optional::empty);
        }
        return number;
    }

    private static void press(Parent in, String words) {
        for (Node node : in.getChildrenUnmodifiable().toArray(Node[]::new)) {
            if (node instanceof Button button && button.getText().equals(words)) {
                button.fire();
            } else if (node instanceof Parent parent) {
                press(parent, words);
            }
        }
    }

    @Override
    public void lay(OpenNotebook now, Notebook asRead, boolean trusted) {
        opened = now;
    }

    @Override
    public void begin() { }

    @Override
    public void halt() { }

    @Override
    public Notebook withResults() {
        return opened.notebook();
    }

    @Override
    public void savedAs(String words) { }

    @Override
    public void recent() { }
}
