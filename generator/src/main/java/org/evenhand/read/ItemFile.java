package org.evenhand.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.evenhand.model.Item;
import org.evenhand.model.Picture;

/** items/ID.yaml: a kind of thing tested. */
final class ItemFile {

    static final Shape PICTURE = Shape.of("a picture")
            .required("file", Scalars.PATH, "the picture's file, relative to this one")
            .required("shows", Scalars.TEXT, "what is to be seen, for those who cannot")
            .required("by", Scalars.TEXT, "who made it")
            .required("licence", Scalars.TEXT, "under which it may be used");

    static final Shape SHAPE = Shape.of("an item")
            .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
            .required("item", Scalars.ID_TEXT, "its name in files and addresses; the file is named alike")
            .required("name", Scalars.TEXT, "its name as readers know it")
            .required("kind", Scalars.TEXT, "what sort of thing it is")
            .optional("maker", Scalars.TEXT, "who makes it")
            .optional("specimens", Shape.listOf(Scalars.SPECIMEN_ID), "the physical examples at hand")
            .optional("unidentified", Scalars.TEXT, "why its specimens are not named, where they are not")
            .optional("obtained", Scalars.TEXT, "how they were come by: bought, lent, given")
            .optional(
                    "limits",
                    Shape.mapOf(Scalars.ID_TEXT, Scalars.QUANTITY_OR_COUNT),
                    "what its maker states: temperature, supply-voltage, supply-current, clock …")
            .optional("notes", Scalars.TEXT, "anything else, in Markdown")
            .optional("pictures", Shape.listOf(PICTURE), "pictures of it");

    private ItemFile() {}

    /** Specimens are told apart in addresses, which know no capitals. */
    static void checkTogether(Fields f, Faults faults) {
        Map<String, String> byLowerCase = new HashMap<>();
        List<String> specimens = f.texts("specimens");
        for (int i = 0; i < specimens.size(); i++) {
            String before = byLowerCase.putIfAbsent(specimens.get(i).toLowerCase(Locale.ROOT), specimens.get(i));
            if (before != null) {
                faults.add(
                        Rules.ID_COLLISION,
                        f.places().of("specimens/" + i),
                        "the specimens “" + before + "” and “" + specimens.get(i) + "” cannot be told apart",
                        "name them differently");
            }
        }
    }

    static Item bind(Fields f) {
        return new Item(
                f.text("item"),
                f.text("name"),
                f.text("kind"),
                f.optionalText("maker"),
                f.texts("specimens"),
                f.optionalText("unidentified"),
                f.optionalText("obtained"),
                f.quantityByName("limits"),
                f.optionalText("notes"),
                pictures(f),
                f.places());
    }

    static List<Picture> pictures(Fields f) {
        return f.groups("pictures").stream()
                .map(p -> new Picture(p.text("file"), p.text("shows"), p.text("by"), p.text("licence")))
                .toList();
    }
}
