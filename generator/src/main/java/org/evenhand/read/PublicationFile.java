package org.evenhand.read;

import org.evenhand.model.Publication;

/** publication.yaml: who publishes, and under which terms. */
final class PublicationFile {

    static final Shape SHAPE = Shape.of("a publication")
            .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
            .required("title", Scalars.TEXT, "the title of the site")
            .required("publisher", Scalars.TEXT, "the person, club or laboratory that publishes")
            .required("base-url", Scalars.WEB_ADDRESS, "the address at which the site will stand, ending in /")
            .required("licence", Scalars.TEXT, "an SPDX identifier such as CC-BY-4.0")
            .optional(
                    "language", Scalars.choice("en", "de"), "the language of the prose and of the pages; en if absent")
            .optional("invented", Scalars.TRUTH, "true if the data are made up; every page then says so")
            .optional("contact", Scalars.TEXT, "how to report an error")
            .optional("about", Scalars.TEXT, "a few words for the front page, in Markdown")
            .optional(
                    "tolerances",
                    Shape.mapOf(Scalars.ID_TEXT, Scalars.QUANTITY_OR_COUNT),
                    "limits that replace the rules' own, by the rule's name");

    private PublicationFile() {}

    static Publication bind(Fields f) {
        return new Publication(
                f.text("title"),
                f.text("publisher"),
                f.text("base-url"),
                f.text("licence"),
                f.optionalText("language").orElse("en"),
                f.optional("invented", Boolean::parseBoolean).orElse(false),
                f.optionalText("contact"),
                f.optionalText("about"),
                f.quantityByName("tolerances"),
                f.places());
    }
}
