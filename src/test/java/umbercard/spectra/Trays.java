package umbercard.spectra;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import umbercard.color.Ciede2000;
import umbercard.color.MunsellValue;
import umbercard.geometry.Point;
import umbercard.photo.Gray;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.photo.Tray;
import umbercard.photo.TraySampling.Cell;
import umbercard.photo.TraySampling.Look;
import umbercard.picture.Picture;
import umbercard.words.Trouble;

/** The trays and lights that the photographed colors are tried on. */
public final class Trays {
    public static final Set<Integer> EMPTY = Set.of(4, 17, 30);
    public static final Set<Integer> GLARING = Set.of(8, 21);
    public static final Set<Integer> GLINTING = Set.of(2, 13, 27);

    /** Black foam. */
    static final double LINING = 0.07;

    /** How uneven the light is: the darkest corner of the tray has three quarters or so of the lightest. */
    public static final Falloff UNEVEN = new Falloff(0.08, 0.1);

    /** How many whites the painter points at, round the tray. */
    public static final int WHITES = 8;

    private Trays() {}

    public static Pinhole view(TrayScene scene) {
        return scene.view(0.35, 0.12);
    }

    public static Picture photograph(TrayScene scene, Camera camera) throws Trouble {
        return PhotoReader.read("tray.jpg", scene.shoot(camera, view(scene)), Progress.NONE);
    }

    /** The tray as a painter marks it, with so many whites. */
    public static Tray marked(TrayScene scene, int whites) {
        double paper = MunsellValue.ofLuminance(TrayScene.PAPER);
        List<Gray> grays = scene.whites(view(scene)).stream()
                .limit(whites)
                .map(place -> new Gray(place, 12, paper))
                .toList();
        List<Point> corners = view(scene).corners(scene.width(), scene.height());
        return new Tray(corners, scene.rows(), scene.columns(), grays, Optional.empty());
    }

    /** How far, by CIEDE2000, what was taken for sticks is from their true colors, rising. */
    public static double[] errors(TrayScene scene, List<Cell> cells) {
        return cells.stream()
                .filter(cell -> cell.look() == Look.STICK)
                .mapToDouble(cell -> {
                    int index = (cell.slot().row() - 1) * scene.columns()
                            + cell.slot().column()
                            - 1;
                    return Ciede2000.difference(
                            cell.color(), Observer.trueColor(scene.sticks().get(index)));
                })
                .sorted()
                .toArray();
    }

    /** The least number that a share of them does not exceed. */
    public static double quantile(double[] rising, double share) {
        return rising[(int) Math.ceil(share * rising.length) - 1];
    }

    /** Six by six sticks on black foam, three slots empty, two sticks glaring, three with a glint. */
    public static TrayScene tray(Falloff falloff) {
        List<Spectrum> sticks = Sticks.of(11, 36);
        return new TrayScene(6, 6, sticks, Spectrum.neutral(LINING), EMPTY, GLARING, GLINTING, falloff);
    }

    /** By name: each light with a balance set to daylight and with the camera's own. */
    public static Map<String, Camera> cameras() {
        Map<String, Camera> cameras = new TreeMap<>();
        Map<String, Spectrum> lights = Map.of("A", Lights.A, "D50", Lights.D50, "D75", Lights.D75, "LED", Lights.LED);
        lights.forEach((name, light) -> {
            cameras.put(name + ", balanced for daylight", Camera.fixed(light, 0.85, 3));
            cameras.put(name + ", balanced by the camera", Camera.asShot(light, 0.85, 4));
        });
        return cameras;
    }
}
