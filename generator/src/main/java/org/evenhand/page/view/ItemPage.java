package org.evenhand.page.view;

import java.util.List;

/**
 * A kind of thing tested.
 *
 * @param frame the page's surroundings
 * @param head identification, kind, how obtained
 * @param name the page's heading
 * @param prose about it; may be empty
 * @param limits given by the maker
 * @param specimens physical examples and what is known of each
 * @param answers that speak of it
 * @param runs on it, by study: each entry a question with the runs that live there
 * @param pictures of it
 * @param files raw, byte for byte as handed in
 */
public record ItemPage(
        Frame frame,
        HeadBlock head,
        String name,
        Markup prose,
        List<Entry> limits,
        List<Entry> specimens,
        List<Listed> answers,
        List<Entry> runs,
        List<Picture> pictures,
        List<FileRow> files) {
    public ItemPage {
        limits = List.copyOf(limits);
        specimens = List.copyOf(specimens);
        answers = List.copyOf(answers);
        runs = List.copyOf(runs);
        pictures = List.copyOf(pictures);
        files = List.copyOf(files);
    }
}
