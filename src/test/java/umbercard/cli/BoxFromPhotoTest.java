package umbercard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.color.Ciede2000;
import umbercard.geometry.Point;
import umbercard.model.Stick;
import umbercard.photo.PhotoReader;
import umbercard.photo.Photographs;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.spectra.Camera;
import umbercard.spectra.Lights;
import umbercard.spectra.Observer;
import umbercard.spectra.Pinhole;
import umbercard.spectra.TrayScene;
import umbercard.spectra.Trays;
import umbercard.store.Boxes;

/** From the photograph of a tray to a box's file, without a screen. */
class BoxFromPhotoTest {
    private static final TrayScene SCENE = Trays.tray(Trays.UNEVEN);
    private static final Pinhole VIEW = Trays.view(SCENE);

    @TempDir
    private static Path folder;

    private static Path photo = Path.of("");

    @BeforeAll
    static void photograph() throws IOException {
        photo = Files.write(folder.resolve("kiln yard.jpg"), SCENE.shoot(Camera.fixed(Lights.D50, 0.85, 8), VIEW));
    }

    private static String places(List<Point> points) {
        return points.stream()
                .map(point -> String.format(Locale.ROOT, "%.1f,%.1f", point.x(), point.y()))
                .collect(Collectors.joining(","));
    }

    private static Calls.Result call(String grid, String corners, Object... more) {
        List<Object> words =
                new ArrayList<>(List.of("box", "--from-photo", photo, "--grid", grid, "--corners", corners));
        words.addAll(List.of("--white", places(SCENE.whites(VIEW)), "--white-is", "9.45"));
        words.addAll(List.of(more));
        return Calls.run(words.toArray());
    }

    private static String corners() {
        return places(VIEW.corners(SCENE.width(), SCENE.height()));
    }

    @Test
    void makesABoxOfTheSticksInTheTray() throws IOException {
        Path box = folder.resolve("yard.json");
        Calls.Result result = call("6x6", corners(), "--name", "Kiln Yard 36", "-o", box);

        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.outLines())
                .contains(
                        "Kiln Yard 36: 33 sticks; 33 owned, 0 worn out, 0 not owned.",
                        "2 sticks shine too much for a color to be trusted: B3, D4."
                                + " Photograph them again in softer light, or put the color right by hand.",
                        "3 places are taken to be empty, looking like the tray's lining: A5, C6, F1.",
                        "Written to " + box + ".");
        List<Stick> sticks = new Boxes().read(box).box().sticks();
        assertThat(sticks).hasSize(33).extracting(Stick::title).startsWith("A1", "A2", "A3", "A4", "A6");
        double[] errors = sticks.stream()
                .mapToDouble(stick -> {
                    Stick.Slot slot = stick.slot().orElseThrow();
                    int cell = 6 * (slot.row() - 1) + slot.column() - 1;
                    return Ciede2000.difference(
                            stick.color(), Observer.trueColor(SCENE.sticks().get(cell)));
                })
                .sorted()
                .toArray();
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(1.2);
    }

    @Test
    void placesAreThoseOfTheFileHoweverLarge() throws IOException {
        Picture small = PhotoReader.read(photo, Progress.NONE);
        Picture large = Photographs.picture(2 * small.width(), 2 * small.height(), (x, y) -> small.rgb(x / 2, y / 2));
        Path file = Files.write(folder.resolve("large.jpg"), Photographs.jpeg(large));
        Calls.Result result = Calls.run(
                "box",
                "--from-photo",
                file,
                "--grid",
                "6x6",
                "--corners",
                places(twice(VIEW.corners(SCENE.width(), SCENE.height()))),
                "--white",
                places(twice(SCENE.whites(VIEW))));
        assertThat(result.err()).isEmpty();
        assertThat(result.out())
                .startsWith("large: 33 sticks")
                .contains("empty, looking like the tray's lining: A5, C6, F1.");
    }

    private static List<Point> twice(List<Point> points) {
        return points.stream().map(p -> new Point(2 * p.x(), 2 * p.y())).toList();
    }

    @Test
    void callsTheBoxAfterThePhotograph() {
        assertThat(call("6x6", corners()).out()).startsWith("kiln yard: 33 sticks");
    }

    @Test
    void saysWhatIsWrongWithTheCall() {
        assertThat(call("6by6", corners()).errLines())
                .singleElement()
                .asString()
                .contains("--grid: \"6by6\" is not a grid; write rows x columns");
        Calls.Result three = call("6x6", "1,2,3,4,5,6");
        assertThat(three.code()).isEqualTo(2);
        assertThat(three.errLines()).singleElement().asString().contains("--corners should be four places");
        assertThat(call("6x6", "1,2,3").err()).contains("is not a list of places");
        Calls.Result both = call("6x6", corners(), "box.json");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.errLines())
                .containsExactly("Only one of FILE, --from-photo may be given. For help: umbercard box --help");
        Calls.Result lonely = Calls.run("box", "--from-photo", photo);
        assertThat(lonely.code()).isEqualTo(2);
        assertThat(lonely.errLines())
                .containsExactly("box still needs --grid, --corners, --white. For help: umbercard box --help");
    }

    @Test
    void saysWhatIsWrongWithTheMarks() {
        Calls.Result crossed = call("6x6", "1,1,300,300,300,1,1,300");
        assertThat(crossed.code()).isEqualTo(1);
        assertThat(crossed.errLines())
                .singleElement()
                .asString()
                .contains(photo.toString(), "clockwise from the upper left");
    }
}
