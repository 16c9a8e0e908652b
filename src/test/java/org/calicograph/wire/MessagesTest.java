package org.calicograph.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Angle;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MessagesTest {

    private static final Place PLACE = new Place(3, 7);
    private static final List<Frame> FRAMES = List.of(new Frame("a1", true, 2, "share"), new Frame("Waves.java", false, 9, "block"));
    private static final Failure.Threw THREW = new Failure.Threw("IOException", "späte Flut", Optional.of(PLACE), FRAMES, List.of("E: f"));

    static List<Failure> failures() {
        return List.of(new Failure.DoesNotCompile(List.of(new Problem(PLACE, new Place(3, 9), "no"))), THREW, new Failure.ShowFailed("Star", THREW),
                new Failure.TimedOut(700), new Failure.Stopped(), new Failure.OutOfMemory(256), new Failure.TooDeep(Optional.empty(), FRAMES),
                new Failure.ExitedKernel(3), new Failure.KernelDied("signal"), new Failure.Depends(List.of("a1", "a2")),
                new Failure.DeclaredTwice("x", List.of("a1", "a2")), new Failure.InCircle(List.of("a1"), List.of("x")), new Failure.DialRefused("d", "why"));
    }

    static List<Dial> dials() {
        return List.of(new Dial.Whole("points", "a1", 5, 16, 1, 12), new Dial.Real("share", "a1", 0, 1, 0, 0.1),
                new Dial.OfLength("width", "a1", Length.inches(2), Length.inches(9), Length.inches(1, 8), Length.inches(1, 3).plus(Length.inches(2))),
                new Dial.OfAngle("lean", "a1", Angle.ZERO, Angle.QUARTER, Angle.ZERO, Angle.degrees(22.5)),
                new Dial.Choice("set", "a1", List.of("straight", "on point"), 1), new Dial.Switch("bound", "a1", true));
    }

    static List<Message> messages() {
        List<Message> all = new java.util.ArrayList<>(List.of(
                new ToKernel.Scan(1, List.of("a1"), List.of("int a;")), new ToKernel.Evaluate(2, "a1", "x\ny", Map.of("d", "3"), List.of()),
                new ToKernel.Turn(3, Map.of(), List.of("a1"), "", List.of()), new ToKernel.Stop(), new ToKernel.Forget(List.of("a1")),
                new ToKernel.Complete(4, "a1", List.of("b"), "t", 1), new ToKernel.Explain(5, "a1", List.of(), "t", 0), new ToKernel.Browse(6),
                new FromKernel.Hello("t", true, 9), new FromKernel.Ready(List.of(new Catalogue.Broken("f", new Problem(PLACE, PLACE, "m")))),
                new FromKernel.Scanned(1, List.of(new CellScan("a1", List.of(new CellScan.Declared("f", "f(int,)")), List.of("r"), List.of("w")))),
                new FromKernel.Began(2, "a1"), new FromKernel.Turned(3, List.of("a1"), List.of("a2")),
                new FromKernel.Suggested(4, 2, List.of(new Suggestion("times(", true, Suggestion.Kind.METHOD))),
                new FromKernel.Explained(5, List.of(new Signature("int f()", "about"))),
                new FromKernel.Browsed(6, new Catalogue(List.of(new Catalogue.Entry("W", "a", "f", List.of(new Catalogue.Routine("int f()", "a", 3)))), List.of()))));
        all.add(new ToKernel.Turn(3, Map.of("d", "3"), List.of("a1"), "/dev/shm/a", List.of(
                new PixelFrame("a1", 0, 640, 460, 1.5, Optional.of(new View(12, 3, 4)), Colour.WHITE, Colour.BLACK), new PixelFrame("a1", 1, 6, 4, 1, Optional.empty(), Colour.BLACK, Colour.BLACK))));
        all.add(new ToKernel.Check(7, "a1", "int a", List.of("a2"), List.of("int b;")));
        all.add(new FromKernel.Checked(7, List.of(new Problem(PLACE, new Place(3, 9), "no"))));
        all.add(new ToKernel.Deliver(4, List.of("a1")));
        all.add(new FromKernel.Sketched(3, "a1", Exhibit.several(Exhibit.words("tide"), Exhibit.of(Picture.EMPTY, "Oyster Beds")),
                List.of(new Painted(1, 24, 6, 4, new Box(0, 0, 3, 2))), 1, 2, 3));
        failures().forEach(f -> all.add(new FromKernel.Evaluated(2, "a1", Optional.of(f), false, "", "out", dials(), 77)));
        all.add(new FromKernel.Evaluated(2, "a1", Optional.empty(), true, "Star", "", List.of(), 77));
        return all;
    }

    private interface Use {
        void with(Channel here, Channel there) throws IOException;
    }

    private static void connected(Use use) throws IOException {
        try (ServerSocket door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                Channel here = Channel.to(door.getLocalPort()); Channel there = new Channel(door.accept())) {
            there.patience(20_000);
            use.with(here, there);
        }
    }

    @ParameterizedTest
    @MethodSource("messages")
    void a_message_arrives_as_it_was_sent(Message message) throws IOException {
        connected((here, there) -> {
            here.send(message);
            assertThat(there.receive()).isEqualTo(message);
        });
    }

    @Test
    void an_exhibit_arrives_with_its_ticket_and_cell() throws IOException {
        connected((here, there) -> {
            here.send(5, "a1", ExhibitFormat.bytes(Exhibit.words("flood")));
            assertThat(there.receiveExhibit()).isEqualTo(new Channel.Delivery(5, "a1", Exhibit.words("flood")));
        });
    }

    @Test
    void a_first_message_that_is_no_hello_or_too_long_is_refused() throws IOException {
        connected((here, there) -> {
            here.send(new FromKernel.Began(1, "a1"));
            assertThatThrownBy(there::receiveHello).isInstanceOf(IOException.class).hasMessageContaining("not a hello");
        });
        connected((here, there) -> {
            here.send(new FromKernel.Hello("x".repeat(5000), true, 1));
            assertThatThrownBy(there::receiveHello).isInstanceOf(IOException.class).hasMessageContaining("5");
        });
    }

    @ParameterizedTest
    @MethodSource("failures")
    void every_failure_says_something(Failure failure) {
        assertThat(failure.message()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("dials")
    void a_dial_reads_what_it_writes(Dial dial) {
        assertThat(dial.turnedTo(dial.text())).isEqualTo(dial);
    }

    @ParameterizedTest
    @CsvSource({"0, 40", "0, 4", "0, twelve", "1, 2", "1, NaN", "2, 10 in", "2, wide", "3, 91", "4, slanted", "5, yes"})
    void a_dial_refuses_what_it_cannot_take_and_names_its_range(int which, String value) {
        Dial dial = dials().get(which);
        assertThatThrownBy(() -> dial.turnedTo(value)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("The dial '" + dial.name() + "' can't be set to").hasMessageContaining(dial.range());
    }

    @Test
    void refusals_of_the_house_are_told_as_the_sentences_they_are() {
        String said = "units of 2 in don't come out whole";
        for (Class<?> refusal : List.of(IllegalArgumentException.class, org.calicograph.covering.DesignException.class)) {
            assertThat(new Failure.Threw(refusal.getSimpleName(), said, Optional.empty(), List.of(), List.of()).message()).isEqualTo(said);
        }
        assertThat(new Failure.Threw("ArithmeticException", "/ by zero", Optional.empty(), List.of(), List.of()).message()).isEqualTo("ArithmeticException: / by zero");
    }
}
