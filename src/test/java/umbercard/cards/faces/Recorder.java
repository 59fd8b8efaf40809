package umbercard.cards.faces;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import umbercard.color.Lab;
import umbercard.door.Drawing;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.picture.Picture;

/** Notes the parts that a side draws. */
final class Recorder implements Drawing {
    private final List<String> ids = new ArrayList<>();

    static List<String> ids(Consumer<Drawing> side) {
        Recorder recorder = new Recorder();
        side.accept(recorder);
        return recorder.ids;
    }

    @Override
    public void group(String id, String title, Runnable inside) {
        ids.add(id);
        inside.run();
    }

    @Override
    public void fill(List<Outline> evenOdd, Lab color) {}

    @Override
    public void stroke(List<Outline> outlines, double width, Lab color) {}

    @Override
    public void line(List<Point> points, double width, Lab color) {}

    @Override
    public void text(String words, Point baseline, double points, Weight weight, Lab color) {}

    @Override
    public void picture(Picture picture, Point corner, double width) {}
}
