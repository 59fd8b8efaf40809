package umbercard.desk.theme;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.util.FontUtils;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.UIManager;

/** Colors and type of the window, by name. Every color of a panel stands in a properties file beside this class. */
public final class Theme {
    private static final String FOLDER = "umbercard.desk.theme";

    /** Of ordinary words, in pixels at 100 %. */
    private static final float SIZE = 13;

    private Theme() {}

    /**
     * Puts the light or the dark theme on; windows that are open already change with it. On the event thread once there are
     * windows.
     */
    public static void install(boolean dark) {
        ClassLoader loader = Theme.class.getClassLoader();
        UIManager.put("ClassLoader", FlatLaf.class.getClassLoader());
        FlatLaf.registerCustomDefaultsSource(FOLDER, loader);
        FlatInterFont.installLazy();
        setFont(SIZE);
        setFont(SIZE * UIScale.getUserScaleFactor());
        FlatLaf.setPreferredLightFontFamily(FlatInterFont.FAMILY_LIGHT);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.setup(dark ? new UmberDark() : new UmberLight());
        FlatLaf.updateUI();
    }

    /** As a default of the program, not of the theme: the theme's would be stretched to the size of the desktop's font. */
    private static void setFont(float size) {
        UIManager.put("defaultFont", FontUtils.getCompositeFont(FlatInterFont.FAMILY, Font.PLAIN, Math.round(size)));
    }

    /** Whether the dark theme is on. */
    public static boolean isDark() {
        return FlatLaf.isLafDark();
    }

    /**
     * The color of that name in the theme that is on.
     *
     * @param name for example {@code Umbercard.paper}
     * @throws IllegalArgumentException if the theme names no such color, or none is on: a defect
     */
    public static Color color(String name) {
        Color color = UIManager.getColor(name);
        if (color == null) {
            throw new IllegalArgumentException("the theme names no color " + name);
        }
        return color;
    }

    /**
     * The font of that name in the theme that is on.
     *
     * @param name for example {@code defaultFont}, {@code semibold.font}, {@code small.font}
     * @throws IllegalArgumentException if the theme names no such font, or none is on: a defect
     */
    public static Font font(String name) {
        Font font = UIManager.getFont(name);
        if (font == null) {
            throw new IllegalArgumentException("the theme names no font " + name);
        }
        return font;
    }

    /** A copy of {@code g} with smooth edges, placed to fractions of a pixel; the caller disposes of it. */
    public static Graphics2D smooth(Graphics g) {
        Graphics2D copy = (Graphics2D) g.create();
        copy.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        copy.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return copy;
    }
}
