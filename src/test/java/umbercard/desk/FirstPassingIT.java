package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import javax.swing.JFrame;
import org.junit.jupiter.api.Test;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.desk.work.Task;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;

class FirstPassingIT extends OnDesk {
    private static final int WIDTH = 240;
    private static final int HEIGHT = 180;

    private Session session;
    private FirstPassing firstPass;

    @Override
    protected JFrame makeWindow() {
        Surface surface = new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true);
        Frame frame = Frame.largest((double) WIDTH / HEIGHT, surface.ratio());
        Study study = Study.begin("Kiln Hill, first snow", surface)
                .withReference(Optional.of(Reference.to("kiln-hill.jpg", "", frame)));
        session = new Session(study, Optional.empty());
        session.photograph(Optional.of(darkBelow()));
        JFrame window = new JFrame("first pass");
        firstPass = new FirstPassing(session, new Background(new Unwatched()), new Telling(window));
        return window;
    }

    /** A light upper half over a dark lower one. */
    private static Picture darkBelow() {
        int[] pixels = new int[WIDTH * HEIGHT];
        Arrays.fill(pixels, 0, pixels.length / 2, 0xe0e0e0);
        Arrays.fill(pixels, pixels.length / 2, pixels.length, 0x303030);
        return new Picture(WIDTH, HEIGHT, pixels);
    }

    private record Unwatched() implements Background.Watch {
        @Override
        public void started(Task task) {}

        @Override
        public void progressed(Task task) {}

        @Override
        public void ended(Task task) {}
    }

    @Test
    void noTwoFirstPassesHaveTheSameName() {
        for (int count = 1; count <= 3; count++) {
            int expected = count;
            act(firstPass::run);
            until(expected + " are there", () -> session.study().thumbnails().size() == expected);
        }
        assertThat(ask(() -> session.study().thumbnails()))
                .extracting(Thumbnail::name)
                .containsExactly("first pass", "first pass 2", "first pass 3");
    }
}
