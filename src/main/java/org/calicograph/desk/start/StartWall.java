package org.calicograph.desk.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import org.calicograph.desk.opened.Clerk;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.Thumbnail;
import org.calicograph.drawing.Picture;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;

/** The wall at the start: each notebook opened last with the largest picture that was saved in it, and a bare nail. */
public final class StartWall extends BorderPane {

    /** What pressing does. */
    public interface Choice {

        void open(Path notebook);

        /** The bare nail: a notebook of one's own. */
        void begin();

        void back();
    }

    /** What hangs for one notebook. */
    private record Look(String title, Optional<Picture> picture) { }

    static final int SIDE = 210;

    private final FlowPane wall = new FlowPane(30, 26);
    private final Choice choice;

    /** @param clerk reads the files, one after another, while the wall hangs already */
    public StartWall(List<Path> recent, Clerk clerk, Choice choice) {
        this.choice = choice;
        getStyleClass().addAll("wall", "start-wall");
        setId("start");
        wall.getStyleClass().add("start-row");
        Label words = new Label("What hung here last. Take one down to go on with it, or use the bare nail.");
        words.getStyleClass().add("start-words");
        words.setWrapText(true);
        VBox all = new VBox(18, words, wall);
        all.getStyleClass().add("start-all");
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("board");
        setCenter(scroll);
        setAccessibleText("The wall at the start");
        recent.forEach(path -> hang(path, clerk));
        wall.getChildren().add(nail());
        addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                choice.back();
                e.consume();
            }
        });
    }

    /** The keyboard goes to the first that hangs. */
    @Override
    public void requestFocus() {
        wall.getChildren().get(0).requestFocus();
    }

    private void hang(Path path, Clerk clerk) {
        String file = path.getFileName().toString();
        ImageView image = new ImageView();
        image.setFitWidth(SIDE);
        image.setFitHeight(SIDE);
        StackPane frame = new StackPane(image);
        frame.setMinSize(SIDE, SIDE);
        Label name = new Label(file);
        Button button = button(frame, name, "in " + path.getParent());
        button.setId("start-" + file.replaceFirst("\\.json$", ""));
        button.setAccessibleText("Go on with " + file);
        button.setOnAction(e -> choice.open(path));
        wall.getChildren().add(button);
        clerk.ask(() -> look(NotebookFile.read(path)), look -> {
            String title = look.title.isBlank() ? file : look.title;
            name.setText(title);
            button.setAccessibleText("Go on with " + title + (look.picture.isPresent() ? "" : ", of which no picture was saved"));
            look.picture.ifPresentOrElse(p -> Thumbnail.paint(p, SIDE * 2, image::setImage), () -> frame.getChildren().setAll(said("No picture was saved in it.")));
        }, trouble -> {
            frame.getChildren().setAll(said("It can't be read: " + trouble.getMessage()));
            button.setAccessibleText(file + " can't be read");
        });
    }

    /** The largest picture that the notebook's file holds: the quilt. */
    private static Look look(Notebook notebook) {
        Optional<Picture> most = Optional.empty();
        double largest = 0;
        for (Map.Entry<String, org.calicograph.notebook.Saved> each : notebook.results().entrySet()) {
            Optional<Picture> picture = ExhibitPane.picture(each.getValue().exhibit());
            double area = picture.map(p -> p.bounds().width() * p.bounds().height()).orElse(0.0);
            if (area > largest && Double.isFinite(area)) {
                largest = area;
                most = picture;
            }
        }
        return new Look(notebook.title(), most);
    }

    private static Label said(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMaxWidth(SIDE - 24);
        label.getStyleClass().add("start-said");
        return label;
    }

    private static Button button(StackPane frame, Label name, String about) {
        name.getStyleClass().add("start-title");
        Label where = new Label(about);
        where.getStyleClass().add("start-about");
        name.setMaxWidth(SIDE);
        where.setMaxWidth(SIDE);
        where.setTextOverrun(javafx.scene.control.OverrunStyle.LEADING_ELLIPSIS);
        frame.getStyleClass().add("start-frame");
        Button button = new Button();
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.getStyleClass().setAll("start-quilt");
        VBox hung = new VBox(4, frame, name, where);
        hung.setAlignment(Pos.TOP_LEFT);
        button.setGraphic(hung);
        return button;
    }

    /** A nail with its shadow on the flannel. */
    private Button nail() {
        Line shadow = new Line(0, 0, 9, 13);
        shadow.getStyleClass().add("nail-shadow");
        Circle head = new Circle(0, 0, 5);
        head.getStyleClass().add("nail-head");
        Pane drawn = new Pane(shadow, head);
        drawn.setMaxSize(10, 14);
        drawn.setTranslateY(-SIDE / 3.0);
        StackPane frame = new StackPane(drawn);
        frame.setMinSize(SIDE, SIDE);
        Button button = button(frame, new Label("A bare nail"), "for a quilt that is not drawn yet");
        frame.getStyleClass().setAll("start-bare");
        button.setId("start-nail");
        button.setAccessibleText("The bare nail: begin a new notebook");
        button.setOnAction(e -> choice.begin());
        return button;
    }
}
