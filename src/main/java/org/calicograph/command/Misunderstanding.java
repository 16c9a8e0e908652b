package org.calicograph.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.fabric.NearestNames;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What was not understood of a command line, in one line that says how to put it right. */
final class Misunderstanding {

    private Misunderstanding() { }

    static String of(ParameterException wrong, String[] given) {
        CommandSpec spec = wrong.getCommandLine().getCommandSpec();
        return Main.oneLine(unknownOption(spec, given).or(() -> unmatched(wrong, spec)).or(() -> missing(wrong))
                .orElse(wrong.getMessage())) + more(spec);
    }

    private static String more(CommandSpec spec) {
        return " ('" + spec.qualifiedName() + " --help' explains)";
    }

    private static Optional<String> unknownOption(CommandSpec spec, String[] given) {
        List<String> known = spec.optionsMap().keySet().stream().filter(n -> n.startsWith("--")).toList();
        for (String word : given) {
            String name = word.contains("=") ? word.substring(0, word.indexOf('=')) : word;
            if (name.matches("--[a-z-]+") && spec.findOption(name) == null) {
                return Optional.of(spec.name() + " has no option '" + name + "'" + NearestNames.question(name, known));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> unmatched(ParameterException wrong, CommandSpec spec) {
        if (!(wrong instanceof UnmatchedArgumentException unmatched)) {
            return Optional.empty();
        }
        String first = unmatched.getUnmatched().get(0);
        if (spec.subcommands().isEmpty()) {
            return Optional.of(spec.name() + " can't use '" + first + "'; leave it out");
        }
        String likely = NearestNames.likely(first, spec.subcommands().keySet());
        return Optional.of("there is no command '" + first + "'" + (likely.isEmpty() ? "; there are " + String.join(", ", spec.subcommands().keySet()) : likely));
    }

    private static Optional<String> missing(ParameterException wrong) {
        if (!(wrong instanceof MissingParameterException missing) || missing.getMissing().isEmpty()) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>();
        for (ArgSpec each : missing.getMissing()) {
            names.add(each instanceof OptionSpec option ? option.longestName() + " " + each.paramLabel() : each.paramLabel());
        }
        return Optional.of(wrong.getCommandLine().getCommandName() + " needs " + String.join(" and ", names) + "; add " + (names.size() == 1 ? "it" : "them"));
    }
}
