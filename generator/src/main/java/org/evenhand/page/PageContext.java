package org.evenhand.page;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Publication;
import org.evenhand.words.Words;

/**
 * What every builder of pages needs.
 *
 * @param checked the results folder, with everything that was found
 * @param root where it lies, for raw files
 * @param templates that pages are filled into
 * @param generator name and version of the program
 * @param frames what every page has around its content
 * @param prose renders Markdown
 * @param drawings draws charts
 * @param pictures shows pictures of the results folder
 * @param words in the language of the publication
 */
public record PageContext(
        CheckedFolder checked,
        Path root,
        Templates templates,
        String generator,
        Frames frames,
        Prose prose,
        Drawings drawings,
        PagePictures pictures,
        Words words) {

    /**
     * Who publishes.
     *
     * @throws IllegalStateException if the folder does not say
     */
    public Publication publication() {
        return checked.folder().publication().orElseThrow(() -> new IllegalStateException("no publication"));
    }

    /** Fills a template, as the bytes of a page. */
    public byte[] render(String template, Record view) {
        return templates.render(template, view, words).getBytes(StandardCharsets.UTF_8);
    }
}
