package org.evenhand.command.completion;

import java.util.concurrent.Callable;
import org.evenhand.command.Streams;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a script by which a shell completes commands. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = {
            "Prints a script by which a shell completes commands, options, formats and names of rules.",
            "bash, for this shell:    source <(evenhand completion bash)",
            "zsh, in ~/.zshrc:        source <(evenhand completion zsh)",
            "fish, for good:          evenhand completion fish > ~/.config/fish/completions/evenhand.fish"
        },
        footer = {"", "Example: evenhand completion bash"})
public final class CompletionCommand implements Callable<Integer> {

    private final Streams streams;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SHELL", description = "${COMPLETION-CANDIDATES}")
    private Shell shell;

    /** For which shell. */
    enum Shell {
        bash,
        zsh,
        fish
    }

    public CompletionCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        CommandSpec root = spec.root();
        // One script serves bash and zsh: it finds out which of them reads it.
        streams.out()
                .print(shell == Shell.fish ? Fish.script(root) : AutoComplete.bash(root.name(), root.commandLine()));
        streams.out().flush();
        return 0;
    }
}
