package org.evenhand.command;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The description of the command line, written as a page of the documents and as a page of the manual. */
final class CommandTexts {

    private static final String EXAMPLE = "Example: ";

    private CommandTexts() {}

    static List<CommandSpec> commands() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        List<CommandSpec> all = new ArrayList<>();
        CommandLine root = Main.line(nowhere, nowhere);
        all.add(root.getCommandSpec());
        root.getSubcommands().values().forEach(sub -> all.add(sub.getCommandSpec()));
        return all;
    }

    /** The calls that the help of a command shows, without the prompt. */
    static List<String> examples(CommandSpec command) {
        return footer(command).stream()
                .filter(l -> l.startsWith(EXAMPLE))
                .map(l -> l.substring(EXAMPLE.length()))
                .toList();
    }

    private static List<String> footer(CommandSpec command) {
        return Arrays.stream(command.usageMessage().footer())
                .map(l -> l.replace("%%", "%"))
                .filter(l -> !l.isEmpty())
                .toList();
    }

    // ---- Markdown ----

    static String markdown() {
        StringBuilder text = new StringBuilder();
        text.append("# The commands\n\n")
                .append(
                        "Every command and every option, as `--help` tells them; a test holds this page to the program.\n")
                .append("From a clone, write `generator/evenhand` for `evenhand`.\n\n")
                .append(
                        "Results go to standard output, messages to standard error. `man docs/evenhand.1` shows the same as a\n")
                .append(
                        "page of the manual, and [`evenhand completion`](#evenhand-completion) teaches it to a shell.\n");
        for (CommandSpec command : commands()) {
            text.append("\n## ").append(command.qualifiedName()).append("\n\n");
            for (String line : description(command)) {
                text.append(code(line) ? "    " + line + "\n" : line + "\n\n");
            }
            text.append(text.toString().endsWith("\n\n") ? "" : "\n");
            text.append("    ").append(synopsis(command)).append("\n\n");
            table(text, command);
            footer(command)
                    .forEach(l -> text.append(
                            l.startsWith(EXAMPLE)
                                    ? "Example: `" + l.substring(EXAMPLE.length()) + "`\n\n"
                                    : l + "\n\n"));
            text.setLength(text.length() - 1);
        }
        return text.toString();
    }

    private static void table(StringBuilder text, CommandSpec command) {
        text.append("| argument | means |\n| --- | --- |\n");
        for (PositionalParamSpec p : command.positionalParameters()) {
            row(text, p.paramLabel(), described(p));
        }
        for (OptionSpec o : command.options()) {
            row(text, names(o), described(o));
        }
        for (CommandLine sub : command.subcommands().values()) {
            CommandSpec s = sub.getCommandSpec();
            row(
                    text,
                    s.name(),
                    "[" + s.qualifiedName() + "](#" + s.qualifiedName().replace(' ', '-') + ")");
        }
        text.append('\n');
    }

    private static void row(StringBuilder text, String name, String means) {
        text.append("| `")
                .append(name)
                .append("` | ")
                .append(means.replace("|", "\\|"))
                .append(" |\n");
    }

    private static boolean code(String line) {
        return line.contains(":  ");
    }

    // ---- The manual ----

    /** In the macros of man(7), which every formatter of manuals knows. */
    static String manual() {
        StringBuilder text = new StringBuilder();
        text.append(".\\\" Made from the description of the command line; a test holds it to the program.\n")
                .append(".TH EVENHAND 1 \"\" \"Evenhand\" \"User Commands\"\n");
        List<CommandSpec> all = commands();
        CommandSpec root = all.get(0);
        text.append(".SH NAME\nevenhand \\- comparison sites from hardware\\-test results\n");
        text.append(".SH SYNOPSIS\n");
        for (CommandSpec command : all.subList(1, all.size())) {
            text.append(".B evenhand ").append(command.name()).append("\n");
            text.append(roff(synopsis(command)
                    .substring(command.qualifiedName().length())
                    .strip()));
            text.append(".br\n");
        }
        text.append(".SH DESCRIPTION\n");
        description(root).forEach(l -> text.append(roff(l)));
        text.append(".SH COMMANDS\n");
        for (CommandSpec command : all.subList(1, all.size())) {
            text.append(".SS ").append(command.name()).append('\n');
            description(command).forEach(l -> text.append(roff(l)).append(code(l) ? ".br\n" : ".PP\n"));
            command.positionalParameters().forEach(p -> entry(text, p.paramLabel(), described(p)));
            command.options().forEach(o -> entry(text, names(o), described(o)));
            footer(command).forEach(l -> text.append(".PP\n").append(roff(l)));
        }
        text.append(".SH EXIT STATUS\n");
        entry(text, "0", "all is well");
        entry(text, "1", "findings block something");
        entry(text, "2", "the call or the input cannot be used at all");
        text.append(".SH ENVIRONMENT\n");
        entry(text, "EVENHAND_JAVA_OPTS", "options for the Java virtual machine, separated by spaces");
        entry(text, "JAVA_HOME", "the Java to use; without it, the one on the PATH");
        entry(text, "NO_COLOR", "if not empty, findings are printed without colour");
        return text.toString()
                .replace(".PP\n.TP", ".TP")
                .replace(".PP\n.PP", ".PP")
                .replace(".PP\n.S", ".S");
    }

    private static void entry(StringBuilder text, String name, String means) {
        text.append(".TP\n.B ").append(escaped(name)).append('\n').append(roff(means));
    }

    /** A line of text: no line may begin with a control character of roff. */
    private static String roff(String text) {
        String safe = escaped(text);
        return (safe.startsWith(".") || safe.startsWith("'") ? "\\&" : "") + safe + "\n";
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\e")
                .replace("-", "\\-")
                .replace("~", "\\(ti")
                .replace("“", "\\(lq")
                .replace("”", "\\(rq")
                .replace("±", "\\(+-")
                .replace("°", "\\(de");
    }

    // ---- What both need ----

    private static List<String> description(CommandSpec command) {
        return Arrays.stream(command.usageMessage().description())
                .map(l -> l.replace("%%", "%"))
                .toList();
    }

    /** On one line, however long. */
    private static String synopsis(CommandSpec command) {
        Help help = new Help(command, Help.defaultColorScheme(Help.Ansi.OFF));
        return help.synopsis(0).strip().replaceAll("\\s+", " ");
    }

    private static String names(OptionSpec option) {
        String value = option.arity().max() > 0 ? " " + option.paramLabel() : "";
        return String.join(", ", option.names()) + value;
    }

    /** With the values in the place of their variables, as the help shows them. */
    private static String described(ArgSpec argument) {
        String text = String.join(" ", argument.description());
        String values =
                argument.completionCandidates() == null ? "" : String.join(", ", argument.completionCandidates());
        return text.replace("${COMPLETION-CANDIDATES}", values)
                .replace("${DEFAULT-VALUE}", String.valueOf(argument.defaultValueString()))
                .replace("%%", "%");
    }
}
