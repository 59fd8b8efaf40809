package umbercard.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import umbercard.photo.TraySampling;
import umbercard.spectra.Camera;
import umbercard.spectra.RubbedCards;
import umbercard.spectra.TrayScene;
import umbercard.spectra.Trays;
import umbercard.words.Trouble;

/** How far the colors of sticks in photographed trays and on rubbed cards are from their true ones, under several lights. */
final class TrayErrors {
    private TrayErrors() {}

    /**
     * What one photograph gave.
     *
     * @param what {@code tray} or {@code card}
     * @param whites how many whites the painter pointed at
     * @param sticks how many were measured
     * @param median of the CIEDE2000 from the true colors
     * @param high the 95th percentile
     */
    record Row(String what, String camera, int whites, int sticks, double median, double high) {
        static Row of(String what, String camera, int whites, double[] rising) {
            return new Row(
                    what, camera, whites, rising.length, Trays.quantile(rising, 0.5), Trays.quantile(rising, 0.95));
        }
    }

    static List<Row> measure() throws Trouble {
        TrayScene scene = Trays.tray(Trays.UNEVEN);
        RubbedCards card = RubbedCards.card(Trays.UNEVEN);
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<String, Camera> camera : Trays.cameras().entrySet()) {
            var picture = Trays.photograph(scene, camera.getValue());
            for (int whites : new int[] {1, Trays.WHITES}) {
                var cells = TraySampling.cells("tray.jpg", picture, Trays.marked(scene, whites));
                rows.add(Row.of("tray", camera.getKey(), whites, Trays.errors(scene, cells)));
            }
            rows.add(Row.of("card", camera.getKey(), 30, card.errors(card.read(camera.getValue()))));
        }
        return rows;
    }
}
