package org.evenhand.site;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What the file system refused, in words; its own exceptions often say no more than a path. */
public final class Trouble {

    private Trouble() {}

    /** One sentence without a full stop. */
    public static String of(IOException e) {
        if (e instanceof NoSuchFileException gone) {
            return gone.getFile() + " is not there any more";
        }
        if (e instanceof AccessDeniedException denied) {
            return denied.getFile()
                    + " is not yours to read or write; give yourself the right, or choose another folder";
        }
        if (e instanceof AtomicMoveNotSupportedException || isBusy(e)) {
            return "the folder is a file system of its own and cannot be exchanged as a whole; give a folder within it";
        }
        if (e instanceof FileAlreadyExistsException there) {
            return there.getFile() + " is there already: this file system takes two names for one";
        }
        if (e instanceof FileSystemException f && f.getReason() != null) {
            return f.getFile() + ": " + f.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static boolean isBusy(IOException e) {
        return e instanceof FileSystemException f && "Device or resource busy".equals(f.getReason());
    }
}
