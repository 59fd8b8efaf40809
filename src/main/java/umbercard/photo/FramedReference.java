package umbercard.photo;

import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Frames;
import umbercard.picture.Picture;

/**
 * A study's photograph as it lies in a thumbnail's frame, small, to be read beside the thumbnail. Keeps the picture framed
 * last. Any thread but the event thread.
 */
public final class FramedReference {
    /** Rows: dark and light of some thirty thousand pixels tell an agreement to well under a hundredth. */
    private static final int HEIGHT = 200;

    private record Asked(Picture photograph, Frame frame, double ratio) {}

    private record Framed(Asked asked, Picture picture) {}

    private Optional<Framed> last = Optional.empty();

    /**
     * The framed photograph, 200 rows high.
     *
     * @return empty for a study without a reference
     * @throws IllegalStateException on the event thread
     */
    public synchronized Optional<Picture> of(Study study, Thumbnail thumbnail, Picture photograph) {
        EventThread.refuse("framing a photograph");
        return Frames.of(study, thumbnail.id())
                .map(frame -> new Asked(photograph, frame, study.ratio()))
                .map(asked -> last.filter(framed -> framed.asked().equals(asked))
                        .orElseGet(() -> new Framed(
                                asked, FramedView.of(asked.photograph(), asked.frame(), asked.ratio(), HEIGHT))))
                .map(framed -> {
                    last = Optional.of(framed);
                    return framed.picture();
                });
    }
}
