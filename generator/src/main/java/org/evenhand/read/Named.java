package org.evenhand.read;

import java.util.Collection;
import java.util.SortedMap;
import java.util.SortedSet;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.Method;
import org.evenhand.model.Place;

/**
 * What can be referred to by name.
 *
 * @param broken folder/id of files that are there but could not be read, so that a reference to them is not called
 *     unknown
 */
record Named(
        SortedMap<String, Item> items,
        SortedMap<String, Instrument> instruments,
        SortedMap<String, Method> methods,
        SortedSet<String> broken) {

    /** Reports a name that leads nowhere, or to a file that could not be read. */
    boolean isKnown(String folder, String id, Place place, Faults faults) {
        Collection<String> known = switch (folder) {
            case "items" -> items.keySet();
            case "instruments" -> instruments.keySet();
            default -> methods.keySet();
        };
        if (known.contains(id)) {
            return true;
        }
        if (broken.contains(folder + "/" + id)) {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    place,
                    "“" + id + "” is needed here, but its file in " + folder + "/ has errors",
                    "mend that file first");
        } else {
            faults.add(
                    Rules.REFERENCE_UNRESOLVED,
                    place,
                    "there is no “" + id + "” in " + folder + "/",
                    NearMiss.suggestion(id, known));
        }
        return false;
    }
}
