package umbercard.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.swing.JFrame;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import umbercard.desk.session.Session;
import umbercard.desk.work.Background;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.photo.Formats;

class PhotographsIT extends OnDesk {
    private static final Study STUDY = Study.begin(
                    "Kiln Hill, first snow", new Surface(12, 9, Surface.Unit.IN, 0.25, Optional.empty(), true))
            .withReference(Optional.of(Reference.to("hill.jpg", "", Frame.largest(2, 1.353))));

    private final List<Integer> seen = new CopyOnWriteArrayList<>();
    private Session session;
    private Photographs photographs;

    @TempDir
    private Path folder;

    @Override
    protected JFrame makeWindow() {
        session = new Session(STUDY, Optional.empty());
        session.listen(change -> session.sight().ifPresent(sight -> seen.add(sight.width())));
        JFrame window = new JFrame("photographs");
        photographs = new Photographs(session, new Background(new Unwatched()), new Telling(window));
        return window;
    }

    private static byte[] camera() throws IOException {
        return Formats.withThumbnail(scene(640), scene(160), 1);
    }

    private static byte[] scene(int width) throws IOException {
        return umbercard.photo.Photographs.jpeg(umbercard.photo.Photographs.picture(
                width, width / 2, (x, y) -> 0x010101 * (30 + 200 * x / width) ^ (y & 1)));
    }

    private void find(byte[] photograph) throws IOException {
        Files.write(folder.resolve("hill.jpg"), photograph);
        act(() -> photographs.find(STUDY, folder.resolve("hill.json")));
        until("the photograph is there", () -> session.photograph().isPresent());
    }

    @Test
    void showsTheFirstSightUntilThePhotographIsThere() throws IOException {
        find(camera());
        assertThat(seen).containsExactly(160, 640);
    }

    @Test
    void showsWhatIsThereOfAPhotographThatBreaksOffAndSaysSo() throws IOException {
        byte[] whole = camera();
        find(Arrays.copyOf(whole, whole.length * 2 / 3));
        assertThat(seen).endsWith(640);
        JOptionPaneFixture told = JOptionPaneFinder.findOptionPane().using(robot());
        assertThat(AtDesk.sentence(told)).contains("hill.jpg breaks off before its end");
        told.okButton().click();
    }
}
