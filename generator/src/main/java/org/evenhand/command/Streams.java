package org.evenhand.command;

import java.io.PrintStream;
import picocli.CommandLine;

/**
 * Where a command writes.
 *
 * @param out takes results
 * @param err takes messages
 */
public record Streams(PrintStream out, PrintStream err) {

    /** Makes commands and hands them their streams. */
    public record Factory(Streams streams) implements CommandLine.IFactory {

        @Override
        public <K> K create(Class<K> type) throws Exception {
            try {
                return type.getDeclaredConstructor(Streams.class).newInstance(streams);
            } catch (NoSuchMethodException e) {
                return CommandLine.defaultFactory().create(type);
            }
        }
    }
}
