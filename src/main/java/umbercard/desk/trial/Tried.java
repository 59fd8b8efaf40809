package umbercard.desk.trial;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Frames;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.notes.layers.ExpectedZone;
import umbercard.notes.layers.Layers;
import umbercard.notes.layers.Trial;
import umbercard.photo.FramedView;
import umbercard.photo.FramedZones;
import umbercard.photo.SquintPyramid;
import umbercard.photo.SquintWay;
import umbercard.photo.Values;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.zones.ZoneMap;

/**
 * What a trial shows: the thumbnail painted with the notes after each number of sittings, what its zones come to, and the
 * squinted reference.
 *
 * @param trials the underpainting, then after the first sitting, and so on to all
 * @param zones what the zones that have notes come to in the end
 * @param squinted in color and in gray; empty without a reference at hand
 */
record Tried(List<Trial> trials, List<ExpectedZone> zones, Optional<Squinted> squinted) {
    /** Rows of the squinted picture: a blur needs no more. */
    private static final int HEIGHT = 400;

    /** The squinted reference. */
    record Squinted(Picture color, Picture gray) {}

    /**
     * Finds it; slow.
     *
     * @throws IllegalStateException on the event thread
     */
    static Tried of(Study study, Thumbnail thumbnail, Optional<Picture> photograph) {
        EventThread.refuse("trying a painting");
        ZoneMap map = ZoneMap.of(study, thumbnail);
        Design design = Fold.of(thumbnail, study.ratio());
        Map<String, List<MainColor>> colors = new FramedZones().colors(thumbnail, study, photograph);
        List<Trial> trials = java.util.stream.IntStream.rangeClosed(0, Trial.sittings(study))
                .mapToObj(sittings -> Trial.of(study, map, design, sittings))
                .toList();
        return new Tried(
                trials,
                Layers.of(study, map, design, colors),
                photograph.flatMap(
                        whole -> Frames.of(study, thumbnail.id()).map(frame -> squinted(study, frame, whole))));
    }

    private static Squinted squinted(Study study, Frame frame, Picture whole) {
        Picture framed = FramedView.of(whole, frame, study.ratio(), HEIGHT);
        SquintPyramid pyramid = new SquintPyramid(framed);
        var squint = study.reference().orElseThrow().squint();
        double sigma = squint.sigma() * Math.hypot(framed.width(), framed.height());
        SquintWay way = SquintWay.of(squint);
        return new Squinted(pyramid.colors(way, sigma).picture(), Values.gray(pyramid.values(way, sigma)));
    }
}
