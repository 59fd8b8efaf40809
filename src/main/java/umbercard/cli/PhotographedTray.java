package umbercard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import umbercard.door.Reads;
import umbercard.geometry.Point;
import umbercard.model.Box;
import umbercard.photo.Gray;
import umbercard.photo.Tray;
import umbercard.photo.TraySampling;
import umbercard.photo.TraySampling.Cell;
import umbercard.picture.Picture;
import umbercard.words.Message;

/** A box that is read from a photograph of its open tray. */
final class PhotographedTray {
    @Option(names = "--from-photo", required = true, paramLabel = "PHOTO", descriptionKey = "cli.help.box.from-photo")
    private Optional<Path> photo = Optional.empty();

    @Option(names = "--grid", required = true, paramLabel = "GRID", descriptionKey = "cli.help.box.grid")
    private Grid grid = Grid.NONE;

    @Option(names = "--corners", required = true, paramLabel = "PLACES", descriptionKey = "cli.help.box.corners")
    private Places corners = Places.NONE;

    @Option(names = "--white", required = true, paramLabel = "PLACES", descriptionKey = "cli.help.box.white")
    private Places white = Places.NONE;

    @Option(names = "--white-is", paramLabel = "VALUE", descriptionKey = "cli.help.box.white-is")
    private MunsellNumber value = new MunsellNumber(Gray.PAPER);

    @Option(names = "--lining", paramLabel = "PLACE", descriptionKey = "cli.help.box.lining")
    private Places lining = Places.NONE;

    @Option(names = "--name", paramLabel = "NAME", descriptionKey = "cli.help.box.name")
    private Optional<String> name = Optional.empty();

    boolean isAsked() {
        return photo.isPresent();
    }

    String file() {
        return photo.map(Path::toString).orElse("");
    }

    Reads read() throws IOException {
        if (corners.points().size() != 4) {
            throw new WrongCall(Message.of("cli.wrong.corners"));
        }
        if (!(value.value() > 0)) {
            throw new WrongCall(Message.of("cli.wrong.white-is"));
        }
        PhotoFile read = PhotoFile.read(photo.orElseThrow());
        Picture picture = read.picture();
        double scale = read.scale();
        List<Gray> grays = white.times(scale).stream()
                .map(place -> Gray.at(place, value.value(), picture))
                .toList();
        Optional<Point> bare = lining.times(scale).stream().findFirst();
        Tray tray = new Tray(corners.times(scale), grid.rows(), grid.columns(), grays, bare);
        List<Cell> cells = TraySampling.cells(file(), picture, tray);
        Box box = TraySampling.box(called(), cells);
        return new Reads(box, List.of(), TraySampling.remarks(cells));
    }

    private String called() {
        return name.map(String::strip)
                .filter(given -> !given.isEmpty())
                .orElseGet(() -> photo.map(Path::getFileName)
                        .map(last -> last.toString().replaceFirst("(?<=.)\\.[^.]*$", ""))
                        .orElse(""));
    }
}
