package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.photo.TraySampling.Cell;
import umbercard.photo.TraySampling.Look;
import umbercard.picture.Picture;
import umbercard.spectra.Camera;
import umbercard.spectra.Falloff;
import umbercard.spectra.Lights;
import umbercard.spectra.Pinhole;
import umbercard.spectra.TrayScene;
import umbercard.spectra.Trays;
import umbercard.words.Trouble;

/** Trays photographed by spectra, so that nothing of the program's own color is turned back on itself. */
class TraySamplingTest {
    private static TrayScene scene = Trays.tray(Falloff.NONE);
    private static Pinhole view = Trays.view(scene);
    private static Picture noon = new Picture(1, 1, new int[1]);

    @BeforeAll
    static void photograph() throws Trouble {
        noon = Trays.photograph(scene, Camera.fixed(Lights.D50, 0.85, 5));
    }

    /** What each light allows: lamplight and LEDs make other differences between sticks than daylight does. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
                    A, balanced for daylight; 2.0; 3.6
                    A, balanced by the camera; 2.5; 7.5
                    D50, balanced for daylight; 1.0; 2.0
                    D50, balanced by the camera; 1.0; 2.0
                    D75, balanced for daylight; 1.1; 2.1
                    D75, balanced by the camera; 1.1; 2.1
                    LED, balanced for daylight; 2.4; 5.0
                    LED, balanced by the camera; 2.4; 5.6
                    """)
    void findsSticksByTheirTrueColorUnderUnevenLight(String camera, double median, double most) throws Trouble {
        TrayScene uneven = Trays.tray(Trays.UNEVEN);
        Picture picture = Trays.photograph(uneven, Trays.cameras().get(camera));
        List<Cell> cells = TraySampling.cells("tray.jpg", picture, Trays.marked(uneven, Trays.WHITES));

        double[] errors = Trays.errors(uneven, cells);
        assertThat(Trays.quantile(errors, 0.5)).as("median").isLessThan(median);
        assertThat(Trays.quantile(errors, 0.95)).as("95th percentile").isLessThan(most);
        assertThat(at(cells, Look.EMPTY)).isEqualTo(Trays.EMPTY);
        assertThat(at(cells, Look.GLARE)).isEqualTo(Trays.GLARING);
        assertThat(at(cells, Look.UNCERTAIN)).isEmpty();
    }

    @Test
    void oneWhiteServesWhereTheLightIsEven() throws Trouble {
        double[] errors = Trays.errors(scene, TraySampling.cells("tray.jpg", noon, Trays.marked(scene, 1)));
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(1);
    }

    @Test
    void oneWhiteIsNotEnoughForUnevenLight() throws Trouble {
        TrayScene uneven = Trays.tray(new Falloff(0.2, 0.2));
        Picture picture = Trays.photograph(uneven, Camera.fixed(Lights.D50, 0.85, 5));
        double one = Trays.quantile(
                Trays.errors(uneven, TraySampling.cells("tray.jpg", picture, Trays.marked(uneven, 1))), 0.5);
        double eight = Trays.quantile(
                Trays.errors(uneven, TraySampling.cells("tray.jpg", picture, Trays.marked(uneven, 8))), 0.5);
        assertThat(eight).isLessThan(0.6 * one);
    }

    @Test
    void readsCellsRowByRow() throws Trouble {
        List<Cell> cells = TraySampling.cells("tray.jpg", noon, Trays.marked(scene, 1));
        assertThat(cells)
                .hasSize(36)
                .extracting(cell -> cell.slot().label())
                .startsWith("A1", "A2")
                .endsWith("F6");
        assertThat(cells.get(7).stick().id()).isEqualTo("B2");
        assertThat(cells.get(7).stick().color()).isEqualTo(cells.get(7).color());
        assertThat(cells.get(7).stick().slot()).contains(cells.get(7).slot());
    }

    @Test
    void aGrayOfStatedValueServesAsWell() throws Trouble {
        // The lining, 7 % of all light, in the shadow of sticks as the renderer has it.
        Point lining = view.seen(new Point(4.5 * TrayScene.CELL_WIDTH, 0.6 * TrayScene.CELL_HEIGHT));
        Tray byGray = tray(view, new Gray(lining, 6, MunsellValue.ofLuminance(0.95 * 0.07)));
        double[] errors = Trays.errors(scene, TraySampling.cells("tray.jpg", noon, byGray));
        assertThat(Trays.quantile(errors, 0.5)).isLessThan(2);
    }

    @Test
    void theLiningThatIsPointedAtTellsEmptySlots() throws Trouble {
        Tray found = Trays.marked(scene, 1);
        Point redStick = view.seen(new Point(2.5 * TrayScene.CELL_WIDTH, 2.5 * TrayScene.CELL_HEIGHT));
        Tray pointed = new Tray(found.corners(), 6, 6, found.grays(), Optional.of(redStick));
        assertThat(at(TraySampling.cells("tray.jpg", noon, pointed), Look.EMPTY))
                .contains(14)
                .doesNotContainAnyElementsOf(Trays.EMPTY);
    }

    @Test
    void aCellOfManyColorsIsUncertain() throws Trouble {
        // Marked one and a half cells off, so that every cell's middle has the gap between two sticks in it.
        TrayScene moved = Trays.tray(Falloff.NONE);
        double half = TrayScene.CELL_HEIGHT / 2;
        List<Point> corners = List.of(
                view.seen(new Point(0, half)),
                view.seen(new Point(moved.width(), half)),
                view.seen(new Point(moved.width(), half + 5 * TrayScene.CELL_HEIGHT)),
                view.seen(new Point(0, half + 5 * TrayScene.CELL_HEIGHT)));
        Tray off = new Tray(corners, 5, 6, Trays.marked(moved, 1).grays(), Optional.empty());
        List<Cell> cells = TraySampling.cells("tray.jpg", noon, off);
        assertThat(at(cells, Look.STICK).size()).isLessThan(10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 1.4})
    void exposureDoesNotMatterUntilWhiteIsClipped(double exposure) throws Trouble {
        Picture picture = Trays.photograph(scene, Camera.fixed(Lights.D50, exposure, 6));
        if (exposure < 1) {
            double[] errors = Trays.errors(scene, TraySampling.cells("tray.jpg", picture, Trays.marked(scene, 1)));
            assertThat(Trays.quantile(errors, 0.5)).isLessThan(1.2);
        } else {
            refuses(picture, Trays.marked(scene, 1), "overexposed");
        }
    }

    @Test
    void saysWhatIsWrongWithTheMarks() throws Trouble {
        Picture dim = Trays.photograph(scene, Camera.fixed(Lights.D50, 0.011, 6));
        Gray white = Trays.marked(scene, 1).grays().get(0);
        List<Point> corners = view.corners(scene.width(), scene.height());
        List<Point> crossed = List.of(corners.get(0), corners.get(2), corners.get(1), corners.get(3));
        refuses(noon, new Tray(crossed, 6, 6, List.of(white), Optional.empty()), "clockwise from the upper left");
        refuses(noon, new Tray(corners, 6, 200, List.of(white), Optional.empty()), "too small");
        refuses(noon, tray(view, new Gray(new Point(3, 3), 12, 9.5)), "reaches out");
        List<Point> wide = List.of(new Point(-9, -9), new Point(1900, -9), new Point(1900, 1400), new Point(-9, 1400));
        refuses(noon, new Tray(wide, 6, 6, List.of(white), Optional.empty()), "The tray reaches out of tray.jpg");
        Point edge = view.seen(new Point(0, scene.height() / 2));
        refuses(noon, tray(view, new Gray(edge, 30, 9.5)), "not even");
        refuses(dim, tray(view, white), "nearly black");
    }

    private static Tray tray(Pinhole from, Gray white) {
        return new Tray(from.corners(scene.width(), scene.height()), 6, 6, List.of(white), Optional.empty());
    }

    private static void refuses(Picture picture, Tray tray, String words) {
        assertThatThrownBy(() -> TraySampling.cells("tray.jpg", picture, tray))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("tray.jpg")
                .hasMessageContaining(words);
    }

    private static Set<Integer> at(List<Cell> cells, Look look) {
        return cells.stream()
                .filter(cell -> cell.look() == look)
                .map(cell -> 6 * (cell.slot().row() - 1) + cell.slot().column() - 1)
                .collect(Collectors.toSet());
    }

    @Test
    void aTrayNeedsItsMarks() {
        List<Point> corners = view.corners(scene.width(), scene.height());
        assertThatThrownBy(() -> new Tray(corners, 6, 6, List.of(), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Gray(corners.get(0), 0, 9)).isInstanceOf(IllegalArgumentException.class);
    }
}
