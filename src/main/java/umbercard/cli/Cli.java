package umbercard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import umbercard.model.Keyed;
import umbercard.model.Light;
import umbercard.notes.order.OrderRule;
import umbercard.remedies.CardLine;
import umbercard.store.Preferred;
import umbercard.words.Trouble;
import umbercard.words.Words;

/**
 * Runs one call of the command line. Exit codes: 0; 2 for a wrong call; 1 for anything else, with one sentence on the error
 * stream that names the file and the remedy. What a programmer needs goes to the log at {@link Level#FINE}; no stack trace is
 * printed.
 */
public final class Cli {
    private static final Logger LOG = Logger.getLogger(Cli.class.getName());

    static final String NAME = "umbercard";

    private Cli() {}

    /**
     * Runs a call; one without arguments opens the desk.
     *
     * @param desk the way to the desk
     * @return the exit code
     */
    public static int run(List<String> arguments, DeskOpener desk, PrintWriter out, PrintWriter err) {
        Words.useValues(Preferred.values());
        CommandLine line = line(desk, out, err);
        List<String> call = arguments.isEmpty() ? List.of(DeskCommand.NAME) : arguments;
        try {
            return line.execute(call.toArray(String[]::new));
        } catch (OutOfMemoryError | StackOverflowError exhausted) {
            err.println(Words.say("cli.trouble.memory"));
            LOG.log(Level.FINE, "a call ran out of memory", exhausted);
            return ExitCode.SOFTWARE;
        } finally {
            out.flush();
            err.flush();
        }
    }

    private static CommandLine line(DeskOpener desk, PrintWriter out, PrintWriter err) {
        CommandSpec program = CommandSpec.create().name(NAME).versionProvider(new Version());
        program.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description(Words.say("cli.help.option.version"))
                .build());
        CommandLine line = new CommandLine(program)
                .addSubcommand(new DeskCommand(desk, out))
                .addSubcommand(new StartCommand(out, err))
                .addSubcommand(new FirstPassCommand(out, err))
                .addSubcommand(new ReadingsCommand(out, err))
                .addSubcommand(new RaiseCommand(out, err))
                .addSubcommand(new ZonesCommand(out))
                .addSubcommand(new MatchCommand(out, err))
                .addSubcommand(new ArrangeCommand(out))
                .addSubcommand(new TurnSkyCommand(out))
                .addSubcommand(new CardsCommand(out, err))
                .addSubcommand(new BoxCommand(out, err))
                .addSubcommand(new PluginsCommand(out))
                .setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setResourceBundle(ResourceBundle.getBundle("umbercard.words.cli"))
                .setParameterExceptionHandler((wrong, words) -> wrongCall(wrong, err))
                .setExecutionExceptionHandler((failure, command, parsed) -> trouble(failure, command, err));
        register(line);
        describe(line);
        line.getSubcommands().values().forEach(Cli::describe);
        return line;
    }

    private static void register(CommandLine line) {
        line.registerConverter(SheetSize.class, SheetSize::parse)
                .registerConverter(Tape.class, Tape::parse)
                .registerConverter(Share.class, Share::parse)
                .registerConverter(Grid.class, Grid::parse)
                .registerConverter(Places.class, Places::parse)
                .registerConverter(Count.class, Count::parse)
                .registerConverter(CardNumber.class, CardNumber::parse)
                .registerConverter(StickCount.class, StickCount::parse)
                .registerConverter(OntoCard.ZoneCount.class, OntoCard.ZoneCount::parse)
                .registerConverter(MunsellNumber.class, MunsellNumber::parse)
                .registerConverter(Numbering.Scale.class, Numbering.Scale::parse)
                .registerConverter(LineHeight.class, LineHeight::parse)
                .registerConverter(CardLine.class, Cli::line)
                .registerConverter(OrderRule.class, Cli::rule)
                .registerConverter(Light.class, Cli::light)
                .registerConverter(Path.class, Cli::path);
    }

    private static Light light(String key) {
        return Keyed.find(Light.class, key)
                .orElseThrow(
                        () -> new TypeConversionException(Words.say("cli.wrong.light", key, Keys.of(Light.class))));
    }

    private static CardLine line(String key) {
        return Keyed.find(CardLine.class, key)
                .orElseThrow(
                        () -> new TypeConversionException(Words.say("cli.wrong.line", key, Keys.of(CardLine.class))));
    }

    private static OrderRule rule(String key) {
        return Keyed.find(OrderRule.class, key)
                .orElseThrow(
                        () -> new TypeConversionException(Words.say("cli.wrong.rule", key, Keys.of(OrderRule.class))));
    }

    private static Path path(String written) {
        try {
            return Path.of(written);
        } catch (InvalidPathException noPath) {
            throw new TypeConversionException(Words.say("cli.wrong.path", written));
        }
    }

    private static void describe(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description(Words.say("cli.help.option.help"))
                .build());
        spec.usageMessage()
                .description(Words.say("cli.help." + spec.name()))
                .synopsisHeading(Words.say("cli.help.synopsis"))
                .descriptionHeading("%n")
                .parameterListHeading("%n")
                .optionListHeading("%n")
                .commandListHeading("%n")
                .sortOptions(false)
                .sortSynopsis(false);
    }

    private static int wrongCall(ParameterException wrong, PrintWriter err) {
        err.println(Words.say("cli.wrong", Wrongs.say(wrong), help(wrong.getCommandLine())));
        LOG.log(Level.FINE, "a wrong call", wrong);
        return ExitCode.USAGE;
    }

    private static String help(CommandLine command) {
        return command.getCommandSpec().qualifiedName() + " --help";
    }

    private static int trouble(Exception failure, CommandLine command, PrintWriter err) {
        LOG.log(Level.FINE, "a call failed", failure);
        if (failure instanceof WrongCall wrong) {
            err.println(Words.say("cli.wrong", String.valueOf(wrong.getMessage()), help(command)));
            return ExitCode.USAGE;
        }
        err.println(said(failure));
        return ExitCode.SOFTWARE;
    }

    private static String said(Exception failure) {
        if (failure instanceof UncheckedIOException unchecked && unchecked.getCause() != null) {
            return said(unchecked.getCause());
        }
        if (failure instanceof Trouble trouble) {
            return Words.say(trouble.said());
        }
        return Words.say(
                failure instanceof IOException ? "cli.trouble.file" : "cli.trouble.defect", failure.toString());
    }
}
