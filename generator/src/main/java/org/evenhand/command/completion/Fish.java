package org.evenhand.command.completion;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The script for fish; the generator of the command-line library knows bash and zsh alone. */
final class Fish {

    private final String program;
    private final StringBuilder script = new StringBuilder();

    private Fish(String program) {
        this.program = program;
    }

    static String script(CommandSpec root) {
        Fish fish = new Fish(root.name());
        fish.script.append("# Completion of ").append(root.name()).append(" for fish.\n");
        fish.line("-f");
        fish.options("__fish_use_subcommand", root);
        root.subcommands().forEach((name, sub) -> {
            CommandSpec command = sub.getCommandSpec();
            fish.line("-n __fish_use_subcommand -a " + name + " -d " + quoted(summary(command)));
            String within = "'__fish_seen_subcommand_from " + name + "'";
            fish.options(within, command);
            command.positionalParameters().forEach(p -> fish.positional(within, p));
        });
        return fish.script.toString();
    }

    private void options(String when, CommandSpec command) {
        for (OptionSpec option : command.options()) {
            List<String> words = new ArrayList<>(List.of("-n", when));
            for (String name : option.names()) {
                words.add(name.startsWith("--") ? "-l " + name.substring(2) : "-s " + name.substring(1));
            }
            if (option.arity().max() > 0) {
                words.add(values(option));
            }
            words.add("-d " + quoted(String.join(" ", option.description())));
            line(String.join(" ", words));
        }
    }

    private void positional(String when, PositionalParamSpec parameter) {
        if (isFile(parameter)) {
            line("-n " + when + " -F");
        } else if (parameter.completionCandidates() != null) {
            line("-n " + when + " -a " + quoted(candidates(parameter)));
        }
    }

    private static String values(OptionSpec option) {
        if (isFile(option)) {
            return "-r -F";
        }
        return option.completionCandidates() == null ? "-x" : "-x -a " + quoted(candidates(option));
    }

    private static boolean isFile(ArgSpec argument) {
        return argument.type() == Path.class
                || List.of(argument.auxiliaryTypes()).contains(Path.class);
    }

    private static String candidates(ArgSpec argument) {
        return StreamSupport.stream(argument.completionCandidates().spliterator(), false)
                .collect(Collectors.joining(" "));
    }

    /** The first sentence of a description. */
    static String summary(CommandSpec command) {
        String all = String.join(" ", command.usageMessage().description());
        int end = all.indexOf(". ");
        return (end < 0 ? all : all.substring(0, end)).replaceAll("[.:]$", "");
    }

    private void line(String words) {
        script.append("complete -c ").append(program).append(' ').append(words).append('\n');
    }

    private static String quoted(String text) {
        return "'" + text.replace("%%", "%").replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
