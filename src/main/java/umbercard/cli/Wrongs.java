package umbercard.cli;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MaxValuesExceededException;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import umbercard.words.Words;

/** Says in a painter's words what is wrong with a call. */
final class Wrongs {
    private Wrongs() {}

    static String say(ParameterException wrong) {
        String command = wrong.getCommandLine().getCommandName();
        if (wrong instanceof MutuallyExclusiveArgsException || wrong instanceof MaxValuesExceededException) {
            return Words.say("cli.wrong.one-of", rivals(wrong.getCommandLine().getCommandSpec()));
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return Words.say("cli.wrong.twice", label(twice.getOverwritten()));
        }
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return Words.say(
                    "cli.wrong.unknown", command, unmatched.getUnmatched().get(0));
        }
        if (wrong instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return Words.say("cli.wrong.missing", command, labels(lacking(missing.getMissing())));
        }
        if (wrong.getCause() instanceof TypeConversionException conversion && wrong.getArgSpec() != null) {
            return Words.say("cli.wrong.value", label(wrong.getArgSpec()), String.valueOf(conversion.getMessage()));
        }
        return sentence(String.valueOf(wrong.getMessage()));
    }

    /** Of options that belong together, those not given that must be. */
    private static List<ArgSpec> lacking(List<ArgSpec> missing) {
        List<ArgSpec> lacking = missing.stream()
                .filter(argument ->
                        argument.required() && argument.originalStringValues().isEmpty())
                .toList();
        return lacking.isEmpty() ? missing : lacking;
    }

    /** The options of a command of which one excludes the other. */
    private static String rivals(CommandSpec command) {
        return labels(command.argGroups().stream()
                .filter(ArgGroupSpec::exclusive)
                .flatMap(Wrongs::rivals)
                .toList());
    }

    /** Of options that belong together the first stands for all. */
    private static Stream<ArgSpec> rivals(ArgGroupSpec group) {
        Stream<ArgSpec> together = group.subgroups().stream()
                .flatMap(inner -> inner.args().stream().limit(1));
        return Stream.concat(group.args().stream(), together);
    }

    private static String labels(Collection<ArgSpec> arguments) {
        return arguments.stream().map(Wrongs::label).collect(Collectors.joining(", "));
    }

    private static String label(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    /** Its first line, ending as a sentence does. */
    private static String sentence(String message) {
        String line = message.lines().findFirst().orElse("").strip();
        return line.endsWith(".") ? line : line + ".";
    }
}
