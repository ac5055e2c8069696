package org.evenhand.command.preview;

import java.util.Optional;
import org.evenhand.check.CheckedFolder;

/**
 * That the folder was read once more.
 *
 * @param checked what it holds; nothing after a fault of this program
 * @param fault what went wrong within this program
 * @param ms how long it took, in milliseconds
 */
public record Renewal(Optional<CheckedFolder> checked, Optional<String> fault, long ms) {}
