package org.calicograph.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code completion}: what a shell needs to finish commands, options and files. */
@Command(
        name = "completion",
        header = "Print what bash and zsh need to complete commands and options.",
        mixinStandardHelpOptions = true,
        footer = {"", "Example:", "  source <(calicograph completion)", ""})
final class CompletionCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(AutoComplete.bash("calicograph", spec.root().commandLine()));
        spec.commandLine().getOut().flush();
        return 0;
    }
}
