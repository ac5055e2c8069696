package org.evenhand.command;

import java.io.PrintWriter;
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
        UnmatchedArgumentException.printSuggestions(e, err);
        CommandLine.Help help = line.getHelp();
        err.print("usage: " + help.synopsis(0).strip() + System.lineSeparator());
        err.println("“" + line.getCommandSpec().qualifiedName() + " --help” tells more");
        err.flush();
        return 2;
    }
}
