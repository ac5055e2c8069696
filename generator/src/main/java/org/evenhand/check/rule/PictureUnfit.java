package org.evenhand.check.rule;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.check.FolderRule;
import org.evenhand.check.Group;
import org.evenhand.check.RuleFacts;
import org.evenhand.measure.Measurements;
import org.evenhand.model.Finding;
import org.evenhand.model.Picture;
import org.evenhand.model.Place;
import org.evenhand.model.Places;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.picture.PictureFiles;
import org.evenhand.picture.UnfitException;
import org.evenhand.prose.PictureReference;
import org.evenhand.prose.ProseSource;
import org.evenhand.read.Rules;
import org.evenhand.words.Words;

/** A picture is decoded and drawn anew, so that nothing but its pixels is published; one that cannot be is not shown. */
public final class PictureUnfit implements FolderRule {

    private static final RuleFacts FACTS = RuleFacts.of(UnfitException.RULE, Group.READING, Severity.WITHHOLD);

    @Override
    public RuleFacts facts() {
        return FACTS;
    }

    @Override
    public List<Finding> check(ResultsFolder folder, Measurements measured, Path root, Words words) {
        Search search = new Search(folder, root, words);
        MarkdownText.allOf(folder).forEach(search::inText);
        folder.items()
                .values()
                .forEach(item -> search.listed(
                        item.pictures(),
                        item.places(),
                        MarkdownText.showing(folder, run -> run.item().equals(item.id()))));
        folder.studies().values().forEach(study -> {
            search.listed(study.pictures(), study.places(), List.of(Subject.study(study.id())));
            study.runs()
                    .forEach(run ->
                            search.listed(run.pictures(), run.places(), List.of(Subject.run(study.id(), run.id()))));
        });
        return search.findings;
    }

    private static final class Search {

        private final ResultsFolder folder;
        private final Path root;
        private final Words words;
        private final List<Finding> findings = new ArrayList<>();
        private final Map<String, Optional<UnfitException>> read = new HashMap<>();
        private final Map<String, String> byAddress = new HashMap<>();

        Search(ResultsFolder folder, Path root, Words words) {
            this.folder = folder;
            this.root = root;
            this.words = words;
        }

        void inText(MarkdownText text) {
            ProseSource source = ProseSource.field(text.start(), text.markdown(), ProseSource.Form.BLOCK);
            for (PictureReference picture : PictureReference.in(source)) {
                Place place = text.place(picture.line(), picture.column(), picture.length());
                if (!text.showsPictures() || !picture.alone()) {
                    found(
                            words.say("rules-reading.picture-unfit.in-sentence"),
                            text.showsPictures()
                                    ? words.say("rules-reading.picture-unfit.own-paragraph")
                                    : words.say("rules-reading.picture-unfit.into-study"),
                            place,
                            text.subjects());
                    continue;
                }
                if (picture.shows().isEmpty()) {
                    found(
                            words.say("rules-reading.picture-unfit.not-described"),
                            words.say("rules-reading.picture-unfit.describe"),
                            place,
                            text.subjects());
                }
                if (picture.credit().isEmpty()) {
                    found(
                            words.say("rules-reading.picture-unfit.no-maker"),
                            words.say("rules-reading.picture-unfit.name-maker"),
                            place,
                            text.subjects());
                }
                try {
                    file(
                            text.start().file(),
                            PictureFiles.addressed(text.start().file(), picture.address()),
                            place,
                            text.subjects());
                } catch (UnfitException e) {
                    found(e, place, text.subjects());
                }
            }
        }

        void listed(List<Picture> pictures, Places places, List<Subject> subjects) {
            String from = places.file().file();
            for (int i = 0; i < pictures.size(); i++) {
                Place place = places.of("pictures/" + i + "/file");
                try {
                    file(from, PictureFiles.within(from, pictures.get(i).file()), place, subjects);
                } catch (UnfitException e) {
                    found(e, place, subjects);
                }
            }
        }

        private void file(String from, String file, Place place, List<Subject> subjects) throws UnfitException {
            read.computeIfAbsent(file, this::fault).ifPresent(e -> found(e, place, subjects));
            String name = PictureFiles.published(from, file);
            String other = byAddress.putIfAbsent(from + " " + name, file);
            if (other != null && !other.equals(file)) {
                found(
                        Rules.ID_COLLISION,
                        words.say("rules-reading.picture-unfit.one-address", file, other, name),
                        words.say("rules-reading.picture-unfit.rename"),
                        place,
                        subjects);
            }
        }

        private Optional<UnfitException> fault(String file) {
            try {
                PictureFiles.read(root, file, folder.limits());
                return Optional.empty();
            } catch (UnfitException e) {
                return Optional.of(e);
            }
        }

        private void found(UnfitException e, Place place, List<Subject> subjects) {
            found(e.rule(), e.why(words), e.remedy(words), place, subjects);
        }

        private void found(String message, String remedy, Place place, List<Subject> subjects) {
            found(FACTS.id(), message, remedy, place, subjects);
        }

        private void found(String rule, String message, String remedy, Place place, List<Subject> subjects) {
            subjects.forEach(s -> findings.add(Finding.fault(rule, FACTS.severity(), place, s, message, remedy)));
        }
    }
}
