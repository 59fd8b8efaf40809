package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.door.Reads;
import umbercard.model.Box;
import umbercard.model.Frame;
import umbercard.model.Light;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.photo.PhotoReader;
import umbercard.photo.Progress;
import umbercard.picture.Picture;
import umbercard.store.References;
import umbercard.store.StudyFile;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Begins a study from a photograph, with one empty thumbnail to draw on. */
@Command(name = "start")
final class StartCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PHOTO", descriptionKey = "cli.help.start.photo")
    private Path photo = Path.of("");

    @Option(names = "-o", required = true, paramLabel = "STUDY", descriptionKey = "cli.help.start.study")
    private Path file = Path.of("");

    @Option(names = "--surface", required = true, paramLabel = "SIZE", descriptionKey = "cli.help.start.surface")
    private SheetSize sheet = SheetSize.NONE;

    @Option(names = "--tape", paramLabel = "WIDTH", descriptionKey = "cli.help.start.tape")
    private Tape tape = Tape.NONE;

    @Option(names = "--light", paramLabel = "LIGHT", descriptionKey = "cli.help.start.light")
    private Light light = Light.CLEAR;

    @Option(names = "--title", paramLabel = "TITLE", descriptionKey = "cli.help.start.title")
    private Optional<String> title = Optional.empty();

    @Option(names = "--concept", paramLabel = "CONCEPT", descriptionKey = "cli.help.start.concept")
    private String concept = "";

    @Option(names = "--box", paramLabel = "BOX", descriptionKey = "cli.help.start.box")
    private Optional<Path> box = Optional.empty();

    private final PrintWriter out;
    private final PrintWriter err;

    StartCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws IOException {
        Surface surface = sheet.surface(tape);
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new Trouble(Message.of("cli.trouble.exists", file.toString()));
        }
        byte[] photograph = PhotoReader.bytes(photo);
        Picture picture = PhotoReader.read(photo.toString(), photograph, Progress.NONE);
        Optional<Reads> sticks = box.isPresent() ? Optional.of(BoxOpening.read(box.get(), err)) : Optional.empty();
        Reference reference = Reference.to(
                References.relativeName(file, photo),
                References.sha256(photograph),
                Frame.largest(picture.ratio(), surface.ratio()));
        Study begun = Study.begin(title(), surface)
                .withConcept(concept.strip())
                .withLight(light)
                .withBox(sticks.map(Reads::box))
                .withReference(Optional.of(reference));
        Thumbnail first = Thumbnail.empty(begun.newId("t"), Words.say("cli.start.thumbnail"));
        Study study = Edits.addThumbnail(first).apply(begun);
        StudyFile.write(study, file);
        tell(study);
        sticks.ifPresent(reads -> BoxOpening.tell(reads, box.map(Path::toString).orElse(""), err));
        return 0;
    }

    private String title() {
        return title.map(String::strip)
                .filter(given -> !given.isEmpty())
                .orElseGet(() -> String.valueOf(photo.getFileName()).replaceFirst("(?<=.)\\.[^.]*$", ""));
    }

    private void tell(Study study) {
        Surface surface = study.surface();
        out.println(Words.say(
                "cli.start.done",
                file.toString(),
                study.title(),
                surface.width(),
                surface.height(),
                Words.say("trade.unit." + surface.unit().key()),
                surface.tape(),
                Words.say("trade.light." + light.key()),
                study.box().map(Box::name).orElse(""),
                study.box().isPresent() ? 1 : 0));
    }
}
