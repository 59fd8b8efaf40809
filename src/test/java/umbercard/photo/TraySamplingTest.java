package umbercard.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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
import umbercard.model.Stick;
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
import umbercard.words.Words;

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
    void aTrayMarkedHalfACellOffShowsNoStick() throws Trouble {
        // Every cell's middle has the gap between two sticks in it: lining, in bright light.
        TrayScene moved = Trays.tray(Falloff.NONE);
        double half = TrayScene.CELL_HEIGHT / 2;
        List<Point> corners = List.of(
                view.seen(new Point(0, half)),
                view.seen(new Point(moved.width(), half)),
                view.seen(new Point(moved.width(), half + 5 * TrayScene.CELL_HEIGHT)),
                view.seen(new Point(0, half + 5 * TrayScene.CELL_HEIGHT)));
        Tray off = new Tray(corners, 5, 6, Trays.marked(moved, 1).grays(), Optional.empty());
        List<Cell> cells = TraySampling.cells("tray.jpg", noon, off);
        assertThat(at(cells, Look.STICK)).isEmpty();
    }

    /**
     * Cells whose middles have thirds of a gray, a greener and a redder color as light: half of each middle is as far from the
     * gray as the nearer of the two. Distances by CIEDE2000 as written in Sharma, Wu and Dalal 2005, worked out apart from the
     * program; the limit of 6 is ours.
     */
    @Test
    void aCellIsUncertainFromTheLimitOn() throws Trouble {
        int gray = 0x787878;
        int[][] thirds = {
            {gray, gray, gray},
            {0x707a78, gray, 0x807678}, // 5.45 and 5.55 from gray
            {0x6e7b78, gray, 0x817578}, // 6.90 and 6.62
            {gray, 0x946e78, gray}, // a third of another color
            {0x946e78, gray, 0x6e7b78},
            {0, 0, 0}
        };
        Picture picture = Photographs.picture(300, 200, (x, y) -> {
            int right = x - 60;
            int down = y - 40;
            if (right < 0 || down < 0 || right >= 180 || down >= 120) {
                return 0xf1f1f1;
            }
            int third = Math.min(2, Math.max(0, (right % 60 - 15) / 10));
            boolean onStick = right % 60 >= 6 && right % 60 < 54 && down % 60 >= 6 && down % 60 < 54;
            return onStick ? thirds[3 * (down / 60) + right / 60][third] : 0;
        });
        List<Point> corners = List.of(new Point(60, 40), new Point(240, 40), new Point(240, 160), new Point(60, 160));
        List<Cell> cells = TraySampling.cells(
                "tray.jpg",
                picture,
                new Tray(corners, 2, 3, List.of(new Gray(new Point(30, 100), 10, 9.5)), Optional.empty()));

        assertThat(cells)
                .extracting(Cell::look)
                .containsExactly(Look.STICK, Look.STICK, Look.UNCERTAIN, Look.STICK, Look.UNCERTAIN, Look.EMPTY);
        double[] spreads = {0, 5.45, 6.62, 0};
        for (int i = 0; i < spreads.length; i++) {
            assertThat(cells.get(i).spread()).isCloseTo(spreads[i], within(0.1));
        }
        assertThat(TraySampling.sticks(cells)).extracting(Stick::title).containsExactly("A1", "A2", "B1");
        assertThat(TraySampling.remarks(cells))
                .extracting(Words::say)
                .contains("2 places show no one color and are left out: A3, B2.");
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
