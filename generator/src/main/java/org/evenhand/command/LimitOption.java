package org.evenhand.command;

import java.util.LinkedHashMap;
import java.util.Map;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option of every command that reads a results folder by which somebody lets more of it be read, or less. */
public final class LimitOption {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--limit",
            paramLabel = "NAME=NUMBER",
            description = "reads up to so much of something, such as file-bytes; may be repeated. A finding of"
                    + " size-limit tells the name; all of them: docs/limits.md")
    private Map<String, Long> changed = new LinkedHashMap<>();

    /** The limits that hold for this call, with a clock that runs. */
    public Limits limits() {
        Limits limits = Limits.DEFAULT.timedBy(System::nanoTime);
        for (Map.Entry<String, Long> one : changed.entrySet()) {
            Quota quota = Quota.named(one.getKey())
                    .orElseThrow(() -> wrong("there is no limit “" + one.getKey() + "”; docs/limits.md lists them"));
            if (one.getValue() == null || one.getValue() < 1) {
                throw wrong("the limit " + quota.id() + " has to be 1 or more");
            }
            limits = limits.with(quota, one.getValue());
        }
        return limits;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
