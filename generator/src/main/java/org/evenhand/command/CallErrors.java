package org.evenhand.command;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.evenhand.read.NearMiss;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in a few lines what is wrong with a call: the error, a near name, one line of usage, where help is. */
final class CallErrors implements CommandLine.IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException e, String[] arguments) {
        CommandLine line = e.getCommandLine();
        PrintWriter err = line.getErr();
        err.println("evenhand: " + e.getMessage());
        List<String> meant = meant(line, arguments);
        meant.forEach(m -> err.println("did you mean “" + m + "”?"));
        if (meant.isEmpty()) {
            UnmatchedArgumentException.printSuggestions(e, err);
        }
        CommandLine.Help help = line.getHelp();
        err.print("usage: " + help.synopsis(0).strip() + System.lineSeparator());
        err.println("“" + line.getCommandSpec().qualifiedName() + " --help” tells more");
        err.flush();
        return 2;
    }

    /** The options that were nearly written, also where another error was found before the wrong name. */
    private static List<String> meant(CommandLine line, String[] arguments) {
        Set<String> known = line.getCommandSpec().optionsMap().keySet();
        return Arrays.stream(arguments)
                .filter(a -> a.startsWith("--"))
                .map(a -> a.split("=", 2)[0])
                .filter(name -> !known.contains(name))
                .flatMap(name -> NearMiss.among(name, known).stream())
                .toList();
    }
}
