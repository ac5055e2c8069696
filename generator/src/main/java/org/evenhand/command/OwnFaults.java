package org.evenhand.command;

import picocli.CommandLine;

/** A fault of the program itself is said to be one; its trace is shown on request only. */
final class OwnFaults implements CommandLine.IExecutionExceptionHandler {

    @Override
    public int handleExecutionException(Exception e, CommandLine line, CommandLine.ParseResult result) {
        if (e instanceof UnusableException) {
            line.getErr().println("evenhand: " + e.getMessage());
            return 2;
        }
        line.getErr().println("evenhand: a fault of this program: " + e);
        line.getErr().println("Please report it with the input that led here. EVENHAND_TRACE=1 shows where it arose.");
        if ("1".equals(System.getenv("EVENHAND_TRACE"))) {
            e.printStackTrace(line.getErr());
        }
        return 2;
    }
}
