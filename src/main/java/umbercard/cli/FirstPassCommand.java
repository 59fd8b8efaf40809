package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import umbercard.model.Frame;
import umbercard.model.Reference;
import umbercard.model.Squint;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.photo.FirstPass;
import umbercard.photo.FramedView;
import umbercard.picture.Picture;
import umbercard.store.StudyFile;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Adds a thumbnail traced from the squinted reference. */
@Command(name = "first-pass")
final class FirstPassCommand implements Callable<Integer> {
    @Parameters(paramLabel = "STUDY", descriptionKey = "cli.help.study")
    private Path file = Path.of("");

    @ArgGroup
    private Aim aim = new Aim();

    @Option(names = "--squint", paramLabel = "SHARE", descriptionKey = "cli.help.first-pass.squint")
    private Optional<Share> squint = Optional.empty();

    @Option(names = "--masses", paramLabel = "N", descriptionKey = "cli.help.first-pass.masses")
    private Optional<Count> masses = Optional.empty();

    @Option(names = "--thumbnail", paramLabel = "N", descriptionKey = "cli.help.first-pass.thumbnail")
    private Optional<String> thumbnail = Optional.empty();

    @Option(names = "--name", paramLabel = "NAME", descriptionKey = "cli.help.first-pass.name")
    private Optional<String> name = Optional.empty();

    private final PrintWriter out;
    private final PrintWriter err;

    FirstPassCommand(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /** What is to go dark: a share of the frame, or all below a value. */
    static final class Aim {
        @Option(names = "--dark-share", paramLabel = "SHARE", descriptionKey = "cli.help.first-pass.dark-share")
        private Optional<Share> darkShare = Optional.empty();

        @Option(names = "--split", paramLabel = "VALUE", descriptionKey = "cli.help.first-pass.split")
        private Optional<MunsellNumber> split = Optional.empty();
    }

    @Override
    public Integer call() throws IOException {
        Opened opened = Opened.read(file);
        Study study = opened.study();
        String called = called(opened);
        Reference reference =
                study.reference().orElseThrow(() -> new Trouble(Message.of("cli.trouble.no-reference", opened.name())));
        FirstPass.Wish wish = wish(reference);
        Optional<Thumbnail> like = like(opened);
        Frame frame = like.flatMap(Thumbnail::frame).orElse(reference.frame());
        FirstPass.Traced traced = FirstPass.trace(framed(study, reference, frame), study.ratio(), wish, () -> false);
        String id = study.newId("t");
        Study longer = traced.addedTo(study, like, id, called);
        StudyFile.write(longer, file);
        tell(longer, id);
        tellMasses(traced);
        return 0;
    }

    /** The thumbnail named; else the chosen one, if it frames the photograph as the study does. */
    private Optional<Thumbnail> like(Opened opened) throws Trouble {
        return thumbnail.isPresent()
                ? Optional.of(opened.thumbnail(thumbnail))
                : opened.study()
                        .chosenThumbnail()
                        .filter(chosen -> chosen.frame().isEmpty());
    }

    private Picture framed(Study study, Reference reference, Frame frame) throws Trouble {
        Picture photograph = ReferencePhotograph.read(study, file, reference, err);
        return FramedView.of(photograph, frame, study.ratio(), FirstPass.HEIGHT);
    }

    private FirstPass.Wish wish(Reference reference) {
        Squint own = FirstPass.Wish.following(reference).squint();
        double sigma = squint.map(Share::of).orElse(own.sigma());
        if (sigma > 0.5) {
            throw new WrongCall(Message.of("cli.wrong.squint"));
        }
        boolean aimed = aim.darkShare.isPresent() || aim.split.isPresent();
        OptionalDouble darkShare =
                aim.darkShare.map(s -> OptionalDouble.of(s.of())).orElse(OptionalDouble.empty());
        OptionalDouble split = aim.split.map(v -> OptionalDouble.of(v.value())).orElse(OptionalDouble.empty());
        return new FirstPass.Wish(darkShare, aimed ? split : reference.split(), new Squint(own.way(), sigma), asked());
    }

    private OptionalInt asked() {
        return masses.map(count -> OptionalInt.of(count.of())).orElse(OptionalInt.empty());
    }

    /** The name wished for, if no other thumbnail has it; else the usual one, with a number if need be. */
    private String called(Opened opened) throws Trouble {
        Optional<String> given = name.map(String::strip).filter(words -> !words.isEmpty());
        String free = opened.study().freeName(given.orElseGet(() -> Words.say("cli.first-pass.thumbnail")));
        if (given.isPresent() && !free.equals(given.get())) {
            throw new Trouble(Message.of("cli.trouble.name-taken", opened.name(), given.get()));
        }
        return free;
    }

    private void tell(Study study, String added) {
        Thumbnail thumbnail = study.thumbnail(added).orElseThrow();
        boolean chosen = study.chosen().filter(added::equals).isPresent();
        out.println(Words.say(
                "cli.first-pass.done",
                file.toString(),
                thumbnail.name(),
                100 * new Opened(file.toString(), study).design(thumbnail).darkShare(),
                thumbnail.marks().size(),
                chosen ? 1 : 0));
    }

    /** Says how many masses there are where others were asked for. */
    private void tellMasses(FirstPass.Traced traced) {
        if (asked().isPresent() && asked().getAsInt() != traced.masses()) {
            out.println(Words.say(
                    "cli.first-pass.masses",
                    traced.masses(),
                    asked().getAsInt(),
                    aim.darkShare.isPresent() ? 0 : aim.split.isPresent() ? 1 : 2));
        }
    }
}
