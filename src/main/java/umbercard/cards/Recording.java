package umbercard.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import umbercard.color.Lab;
import umbercard.door.Drawing;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Size;
import umbercard.picture.Picture;

/**
 * Keeps what a face draws, to be drawn again. A face runs once, while it is asked to lay out, so that one that fails is
 * found out before anything is written and takes no writer along.
 */
final class Recording implements Drawing {
    private final List<Consumer<Drawing>> strokes = new ArrayList<>();

    /** What a side draws, drawn once. */
    static Consumer<Drawing> of(Consumer<Drawing> side) {
        Recording recording = new Recording();
        side.accept(recording);
        return recording::play;
    }

    private void play(Drawing drawing) {
        strokes.forEach(stroke -> stroke.accept(drawing));
    }

    @Override
    public void group(String id, String title, Runnable inside) {
        List<Consumer<Drawing>> outside = List.copyOf(strokes);
        strokes.clear();
        inside.run();
        List<Consumer<Drawing>> within = List.copyOf(strokes);
        strokes.clear();
        strokes.addAll(outside);
        strokes.add(drawing -> drawing.group(id, title, () -> within.forEach(stroke -> stroke.accept(drawing))));
    }

    @Override
    public void rectangle(String id, String title, Point corner, Size size, Lab color) {
        strokes.add(drawing -> drawing.rectangle(id, title, corner, size, color));
    }

    @Override
    public void fill(List<Outline> evenOdd, Lab color) {
        List<Outline> outlines = List.copyOf(evenOdd);
        strokes.add(drawing -> drawing.fill(outlines, color));
    }

    @Override
    public void stroke(List<Outline> outlines, double width, Lab color) {
        List<Outline> kept = List.copyOf(outlines);
        strokes.add(drawing -> drawing.stroke(kept, width, color));
    }

    @Override
    public void line(List<Point> points, double width, Lab color) {
        List<Point> kept = List.copyOf(points);
        strokes.add(drawing -> drawing.line(kept, width, color));
    }

    @Override
    public void text(String words, Point baseline, double points, Weight weight, Lab color) {
        strokes.add(drawing -> drawing.text(words, baseline, points, weight, color));
    }

    @Override
    public void picture(Picture picture, Point corner, double width) {
        strokes.add(drawing -> drawing.picture(picture, corner, width));
    }
}
