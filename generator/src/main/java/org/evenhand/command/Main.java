package org.evenhand.command;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Where the program starts; the only place that ends it. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int status = run(out, err, arguments);
        out.flush();
        System.exit(status);
    }

    /**
     * Runs one command.
     *
     * @param out takes results
     * @param err takes messages
     * @return the exit status: 0 well, 1 findings block something, 2 the call or the input cannot be used at all
     */
    static int run(PrintStream out, PrintStream err, String... arguments) {
        return line(out, err).execute(arguments);
    }

    /** The command line with all its commands. */
    static CommandLine line(PrintStream out, PrintStream err) {
        CommandLine line = new CommandLine(new EvenhandCommand(), new Streams.Factory(new Streams(out, err)));
        line.setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setUsageHelpAutoWidth(false);
        line.setUsageHelpWidth(100);
        line.setParameterExceptionHandler(new CallErrors());
        line.setExecutionExceptionHandler(new OwnFaults());
        return line;
    }
}
