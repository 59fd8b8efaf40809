package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import umbercard.store.Samples;
import umbercard.store.StudyFile;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Opens the desk; where there is no display, says so and writes Kiln Hill's cards. */
@Command(name = DeskCommand.NAME)
final class DeskCommand implements Callable<Integer> {
    static final String NAME = "desk";

    @Parameters(arity = "0..1", paramLabel = "STUDY", descriptionKey = "cli.help.desk.study")
    private Optional<Path> study = Optional.empty();

    private final DeskOpener desk;
    private final PrintWriter out;

    DeskCommand(DeskOpener desk, PrintWriter out) {
        this.desk = desk;
        this.out = out;
    }

    @Override
    public Integer call() throws IOException {
        if (study.isPresent()) {
            StudyFile.read(study.get());
            if (!desk.canOpen()) {
                throw new Trouble(
                        Message.of("cli.trouble.no-display", study.get().toString()));
            }
        }
        if (desk.canOpen()) {
            desk.open(study);
        } else {
            writeKilnHill(Path.of("").toAbsolutePath());
        }
        return 0;
    }

    private void writeKilnHill(Path here) throws IOException {
        Path folder = cardFolder(here);
        out.println(Words.say("cli.desk.no-display", folder.toString()));
        CardRun run = new CardRun();
        run.lay(new Opened(Words.say("cli.desk.kiln-hill"), Samples.kilnHill().study()));
        run.write(List.of("svg"), folder, out);
    }

    /** Below {@code target} where the program is run from its sources, which keeps them clean; otherwise beside the painter. */
    static Path cardFolder(Path here) {
        boolean fromSources = Files.exists(here.resolve("pom.xml")) || Files.isDirectory(here.resolve("target"));
        return Path.of(fromSources ? "target/cards" : "cards");
    }
}
