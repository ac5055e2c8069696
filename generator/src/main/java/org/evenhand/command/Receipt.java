package org.evenhand.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.evenhand.cache.Cache;
import org.evenhand.check.CheckedFolder;
import org.evenhand.model.Limits;

/**
 * What a publication was made of and what came of it, so that the next one is over at once if nothing has changed.
 *
 * @param inputs the states of the files of the results folder and of the templates
 * @param site the states of the files of the site
 * @param summary what was said at the end
 */
record Receipt(String inputs, String site, String summary) {

    /** How to find a receipt, and what is the case now. */
    record Question(Cache cache, String key, Optional<String> inputs, List<Path> read, Path target) {

        /** To be asked before anything is read. */
        static Question of(Cache cache, Path folder, Optional<Path> templates, Limits limits, Path target) {
            List<Path> read = templates.map(t -> List.of(folder, t)).orElse(List.of(folder));
            String key = cache.key(
                    "publication", read.stream().map(Question::name).toList(), name(target), limits.changed());
            return new Question(cache, key, states(cache, read), read, target);
        }

        private static String name(Path path) {
            return path.toAbsolutePath().normalize().toString();
        }

        /** The receipt of the publication that stands there, if another would come to the same. */
        Optional<Receipt> answer() {
            return cache.get(key, Receipt.class)
                    .filter(receipt -> inputs.filter(receipt.inputs()::equals).isPresent())
                    .filter(receipt -> cache.states(target, false)
                            .filter(receipt.site()::equals)
                            .isPresent());
        }

        /**
         * Keeps the receipt of a publication, unless files may have changed while it was made. One that was held against
         * the former site and found differences, or that withheld anything, is not kept: the next one might come to
         * something else.
         */
        void keep(CheckedFolder checked, String summary) {
            boolean settled = !checked.withholds()
                    && checked.studies().values().stream()
                            .allMatch(study -> study.moved().isEmpty());
            if (cache.keepsNothing() || !settled || inputs.isEmpty() || !inputs.equals(states(cache, read))) {
                return;
            }
            cache.states(target, false).ifPresent(site -> cache.put(key, new Receipt(inputs.get(), site, summary)));
        }

        private static Optional<String> states(Cache cache, List<Path> folders) {
            if (cache.keepsNothing()) {
                return Optional.empty();
            }
            StringBuilder states = new StringBuilder();
            for (Path folder : folders) {
                Optional<String> of = cache.states(folder, true);
                if (of.isEmpty()) {
                    return Optional.empty();
                }
                states.append(of.get()).append(' ');
            }
            return Optional.of(states.toString());
        }
    }
}
