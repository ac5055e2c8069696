package org.evenhand.command;

import org.evenhand.command.completion.CompletionCommand;
import org.evenhand.command.plan.PlanCommand;
import org.evenhand.command.start.StartCommand;
import org.evenhand.command.takein.TakeInCommand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program as a whole; what it does is in its subcommands. */
@Command(
        name = "evenhand",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Turns a folder of hardware-test results into a comparison site whose every number can be traced.",
        footer = {
            "",
            "Example: evenhand check sample-results",
            "Exit status: 0 well; 1 findings block something; 2 the call or the input cannot be used."
        },
        subcommands = {
            StartCommand.class,
            PlanCommand.class,
            TakeInCommand.class,
            CheckCommand.class,
            PreviewCommand.class,
            PublishCommand.class,
            AuditCommand.class,
            PackCommand.class,
            SealCommand.class,
            ExplainCommand.class,
            CompletionCommand.class
        })
final class EvenhandCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "say what to do: start, plan, take-in, check, preview, publish, audit, pack, seal, explain or"
                        + " completion");
    }
}
