package org.calicograph.desk.press;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.calicograph.desk.results.PictureView;
import org.calicograph.desk.spoken.Name;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;

/** The pages as they will be printed, in the wall's place, and a printer to send them to. */
public final class PreviewPage extends BorderPane {

    private static final double SIDE = 300;
    private static final double LEAST = 200;
    private static final double MOST = 1500;
    private static final double STEP = 1.5;

    private final Press press;
    private final List<Picture> pages;
    private final Paper paper;
    private final ComboBox<String> printers = new ComboBox<>();
    private final Button print = new Button("Print");
    private final Label told = new Label();
    private final List<PictureView> views = new ArrayList<>();
    private final Button larger = button("Larger", "The pages larger", STEP);
    private final Button smaller = button("Smaller", "The pages smaller", 1 / STEP);
    private double side = SIDE;

    /**
     * @param pages with their top left corners at the origin
     * @param words what these pages are, and at which size
     * @param back  takes the wall's place again
     */
    public PreviewPage(List<Picture> pages, Paper paper, String words, Press press, Runnable back) {
        this.press = press;
        this.pages = pages;
        this.paper = paper;
        getStyleClass().add("sheet-page");
        setId("preview");
        printers.setId("printer");
        Name.of(printers, "Printer");
        printers.getItems().setAll(press.printers());
        printers.getSelectionModel().selectFirst();
        print.setId("print");
        print.getStyleClass().add("chief");
        print.setAccessibleText("Print " + count());
        print.setDisable(printers.getItems().isEmpty());
        print.setOnAction(e -> print());
        Button leave = new Button("Back to the wall");
        leave.setOnAction(e -> back.run());
        told.setId("printed");
        told.setWrapText(true);
        told.setText(printers.getItems().isEmpty() ? "This computer knows of no printer. Add one in its settings, or save to a file from the menu Paper." : words);
        FlowPane row = new FlowPane(8, 8, new Label(count() + " of " + paper.name() + " to"), printers, print, larger, smaller, leave);
        row.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(8, row, told);
        head.getStyleClass().add("sheet-head");
        FlowPane sheets = new FlowPane(18, 18);
        sheets.getStyleClass().add("spread");
        for (int i = 0; i < pages.size(); i++) {
            PictureView view = new PictureView(PagePicture.onPaper(pages.get(i), paper), "page " + (i + 1) + " of " + pages.size());
            view.getStyleClass().add("preview-page");
            views.add(view);
        }
        sheets.getChildren().setAll(views);
        enlarge(1);
        ScrollPane scroll = new ScrollPane(sheets);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("board");
        setTop(head);
        setCenter(scroll);
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                back.run();
                e.consume();
            }
        });
    }

    @Override
    public void requestFocus() {
        (print.isDisable() ? printers : print).requestFocus();
    }

    private Button button(String words, String spoken, double factor) {
        Button button = new Button(words);
        button.setId("preview-" + words.toLowerCase(java.util.Locale.ROOT));
        button.setAccessibleText(spoken);
        button.setOnAction(e -> enlarge(factor));
        return button;
    }

    private void enlarge(double factor) {
        side = Math.max(LEAST, Math.min(MOST, side * factor));
        views.forEach(v -> v.setPrefSize(side, side * paper.height().inInches() / paper.width().inInches()));
        larger.setDisable(side >= MOST);
        smaller.setDisable(side <= LEAST);
    }

    private String count() {
        return pages.size() == 1 ? "1 page" : pages.size() + " pages";
    }

    private void print() {
        print.setDisable(true);
        told.setText("On the way\u2026");
        press.print(printers.getValue(), pages, paper).thenAccept(words -> Platform.runLater(() -> {
            told.setText(words);
            print.setDisable(false);
        }));
    }
}
