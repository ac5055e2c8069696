package org.evenhand.read;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** What a field may hold: tells what is wrong with a node, and says the same as JSON Schema. */
interface FieldType {

    /** Reports all that is wrong with the node and what stands in it. */
    void check(Node node, Faults faults);

    /** The same demand as far as JSON Schema (2020-12) can express it. */
    ObjectNode schema();
}
