package org.evenhand.page;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;
import org.evenhand.check.CheckedFolder;
import org.evenhand.check.CheckedStudy;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Place;
import org.evenhand.model.Study;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Markup;
import org.evenhand.page.words.StudyNames;
import org.evenhand.prose.EvidenceAddress;
import org.evenhand.prose.EvidenceResolver;
import org.evenhand.prose.PictureAddress;
import org.evenhand.prose.ProseSource;
import org.evenhand.prose.StudyResolver;
import org.evenhand.prose.Target;
import org.evenhand.words.Words;

/** The prose of a results folder, with its evidence links leading to the rows of its pages. */
final class FolderProse implements Prose {

    /** An author's first heading stands below the page's own of level two. */
    private static final int HEADING_SHIFT = 1;

    /** What is wrong with a text has been told by the checks; here its place does not matter. */
    private static final Place NOWHERE = Place.of("");

    private final CheckedFolder checked;
    private final PagePictures pictures;
    private final Words words;

    FolderProse(CheckedFolder checked, PagePictures pictures, Words words) {
        this.checked = checked;
        this.pictures = pictures;
        this.words = words;
    }

    @Override
    public Markup flow(String markdown, String page, Optional<CheckedStudy> study) {
        return new Markup(render(markdown, ProseSource.Form.BLOCK, page, study, true));
    }

    @Override
    public Markup phrase(String markdown, String page, Optional<CheckedStudy> study) {
        return new Markup(render(markdown, ProseSource.Form.INLINE, page, study, true));
    }

    @Override
    public String plain(String markdown, Optional<CheckedStudy> study) {
        String page = study.map(s -> Address.answer(s.evidence().study().id())).orElse(Address.INDEX);
        return render(markdown, ProseSource.Form.INLINE, page, study, false)
                .replaceAll("<[^<>]*+>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#39;", "'")
                .replace("&amp;", "&")
                .strip();
    }

    private String render(
            String markdown, ProseSource.Form form, String page, Optional<CheckedStudy> study, boolean withNotes) {
        EvidenceResolver resolver = study.isPresent()
                ? StudyResolver.of(checked.folder(), study.get().evidence(), study.get()::verdict)
                : StudyResolver.withoutStudy(checked.folder());
        return org.evenhand.prose.Prose.render(
                        ProseSource.field(NOWHERE, markdown, form),
                        resolver,
                        withNotes ? new OnPage(page, noteId(markdown, study)) : target -> address(target, page),
                        reference -> pictures.named(page, reference)
                                .map(p -> new PictureAddress.Shown(
                                        Address.rootFrom(page) + p.path(), p.width(), p.height())),
                        HEADING_SHIFT)
                .html()
                .strip();
    }

    /** Where a text stands, with the notes to its figures. */
    private final class OnPage implements EvidenceAddress {
        private final String page;
        private final String notes;

        OnPage(String page, String notes) {
            this.page = page;
            this.notes = notes;
        }

        @Override
        public String of(Target target) {
            return address(target, page);
        }

        @Override
        public Optional<String> notes() {
            return Optional.of(notes);
        }
    }

    /** Several texts may stand on a page, each with its notes: what is written in them tells them apart. */
    private static String noteId(String markdown, Optional<CheckedStudy> study) {
        CRC32 sum = new CRC32();
        sum.update(markdown.getBytes(StandardCharsets.UTF_8));
        String of = study.map(s -> s.evidence().study().id() + ".").orElse("");
        return "note." + of + String.format(Locale.ROOT, "%08x", sum.getValue());
    }

    private String address(Target target, String page) {
        if (target instanceof Target.OfComparison t) {
            return relative(page, Address.answer(t.study()), Address.comparison(t.comparison()));
        }
        if (target instanceof Target.OfLevel t) {
            return relative(
                    page, Address.answer(t.study()), Address.level(t.level(), measurand(t.study(), t.measurand())));
        }
        if (target instanceof Target.OfRun t) {
            return relative(
                    page, Address.answer(t.study()), Address.value(t.run(), measurand(t.study(), t.measurand())));
        }
        if (target instanceof Target.OfItem t) {
            return relative(page, Address.item(t.item()), "limits");
        }
        return relative(page, Address.method(((Target.OfMethod) target).method()), "content");
    }

    private String measurand(String study, MeasurandId id) {
        Study of = checked.folder().studies().get(study);
        return new StudyNames(checked.folder(), of, words).address(id);
    }

    private static String relative(String from, String to, String id) {
        return (from.equals(to) ? "" : Address.rootFrom(from) + to) + "#" + id;
    }
}
