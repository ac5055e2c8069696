package org.evenhand.site;

import java.nio.file.Path;

/** A process that replaces one site by another for ever, to be killed. Arguments: target, source, first edition, files. */
final class Replacing {

    private Replacing() {}

    public static void main(String[] arguments) throws Exception {
        int edition = Integer.parseInt(arguments[2]);
        int files = Integer.parseInt(arguments[3]);
        System.out.println("ready");
        System.out.flush();
        while (true) {
            Sites.publish(Path.of(arguments[0]), Path.of(arguments[1]), edition++, files, new LocalDisk());
        }
    }
}
