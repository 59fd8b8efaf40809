package umbercard.desk;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JSlider;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicSliderUI;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.desk.theme.Theme;
import umbercard.photo.ValueCurve;
import umbercard.readings.Fraction;
import umbercard.words.Words;

/** Draws a {@link SplitCurve} over the steps of the painter's scale of values, dark at the left; a press anywhere takes the split there. */
final class SplitCurveUI extends BasicSliderUI {
    private static final int THUMB = 12;
    private static final float SCALE = 6;
    private static final float POINTER = 5;
    private static final float DOT = 4;
    private static final float KNOB = 8;

    private final SplitCurve split;

    SplitCurveUI(SplitCurve split) {
        super(split);
        this.split = split;
    }

    /** The Munsell value at a place across. */
    double valueAt(int x) {
        double part = (x - trackRect.x) / Math.max(1.0, trackRect.width - 1.0);
        return SplitCurve.MOST_VALUE * Math.min(1, Math.max(0, part));
    }

    private double x(double value) {
        return trackRect.x + value / SplitCurve.MOST_VALUE * (trackRect.width - 1) + 0.5;
    }

    private double foot() {
        return slider.getHeight() - UIScale.scale(SCALE + POINTER + 2);
    }

    private double y(double share) {
        double top = UIScale.scale(KNOB) / 2 + 1;
        return foot() - share * (foot() - top);
    }

    @Override
    protected Dimension getThumbSize() {
        return new Dimension(UIScale.scale(THUMB), UIScale.scale(THUMB));
    }

    @Override
    protected TrackListener createTrackListener(JSlider slider) {
        return new Pressed();
    }

    @Override
    public void paint(Graphics graphics, JComponent component) {
        Graphics2D g = Theme.smooth(graphics);
        paintScale(g);
        split.curve().ifPresent(curve -> paintCurve(g, curve));
        if (slider.isFocusOwner()) {
            g.setColor(Theme.color("Component.focusedBorderColor"));
            g.setStroke(new BasicStroke(1));
            g.draw(new Rectangle2D.Double(.5, .5, slider.getWidth() - 1.0, slider.getHeight() - 1.0));
        }
        g.dispose();
    }

    private void paintScale(Graphics2D g) {
        double top = foot() + 1;
        List<Double> marks = Words.values().marks();
        for (int i = 1; i < marks.size(); i++) {
            double lightness = Lab.lightness(MunsellValue.luminance((marks.get(i - 1) + marks.get(i)) / 2));
            g.setColor(new Color(Lab.gray(lightness).srgb()));
            double left = x(marks.get(i - 1));
            g.fill(new Rectangle2D.Double(left, top, x(marks.get(i)) - left + .5, UIScale.scale(SCALE)));
        }
        // One of the steps is as dark as the surround, whichever theme it is.
        g.setColor(Theme.color("Umbercard.sheetLine"));
        g.setStroke(new BasicStroke(1));
        g.draw(new Rectangle2D.Double(x(0), top, x(SplitCurve.MOST_VALUE) - x(0), UIScale.scale(SCALE)));
    }

    private void paintCurve(Graphics2D g, ValueCurve curve) {
        Color ink = Theme.color(slider.isEnabled() ? "Umbercard.onSurround" : "Umbercard.onSurroundSoft");
        split.split().ifPresent(at -> {
            g.setColor(Theme.color("Umbercard.surroundPressed"));
            g.fill(line(curve, at, true));
        });
        g.setColor(ink);
        g.setStroke(new BasicStroke(UIScale.scale(1.25f)));
        g.draw(line(curve, SplitCurve.MOST_VALUE, false));
        for (Fraction fraction : Fraction.values()) {
            dot(g, x(curve.valueFor(fraction.share())), y(fraction.share()), DOT);
        }
        paintPointer(g, x(curve.otsu()));
        split.split().ifPresent(at -> {
            g.draw(new Line2D.Double(x(at), y(1), x(at), foot() + UIScale.scale(SCALE) + 1));
            dot(g, x(at), y(curve.shareBelow(at)), KNOB);
        });
    }

    private static void dot(Graphics2D g, double x, double y, float size) {
        double wide = UIScale.scale(size);
        g.fill(new Ellipse2D.Double(x - wide / 2, y - wide / 2, wide, wide));
    }

    /** A small pointer at the value from below. */
    private void paintPointer(Graphics2D g, double x) {
        double top = foot() + UIScale.scale(SCALE) + 2;
        double size = UIScale.scale(POINTER) - 1;
        Path2D pointer = new Path2D.Double();
        pointer.moveTo(x, top);
        pointer.lineTo(x + size * .75, top + size);
        pointer.lineTo(x - size * .75, top + size);
        pointer.closePath();
        g.fill(pointer);
    }

    private Path2D line(ValueCurve curve, double upTo, boolean closed) {
        Path2D line = new Path2D.Double();
        line.moveTo(x(0), y(0));
        int pixels = Math.max(1, trackRect.width);
        for (int i = 0; i <= pixels; i++) {
            double value = upTo * i / pixels;
            line.lineTo(x(value), y(curve.shareBelow(value)));
        }
        if (closed) {
            line.lineTo(x(upTo), y(0));
            line.closePath();
        }
        return line;
    }

    /** Takes the mark to where the pointer presses. */
    private final class Pressed extends TrackListener {
        @Override
        public void mousePressed(MouseEvent event) {
            if (slider.isEnabled() && SwingUtilities.isLeftMouseButton(event)) {
                slider.setValue((int) Math.round(valueAt(event.getX()) * SplitCurve.STEPS / SplitCurve.MOST_VALUE));
            }
            super.mousePressed(event);
        }
    }
}
