package org.evenhand.page.overview;

import org.evenhand.page.PageContext;
import org.evenhand.page.PageSink;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Change;
import org.evenhand.page.view.ChangesPage;
import org.evenhand.page.view.Link;

/** The page of changes. */
public final class ChangePages {

    private ChangePages() {}

    public static void build(PageContext context, History history, PageSink sink) {
        ChangesPage page = new ChangesPage(
                context.frames()
                        .of(
                                Address.CHANGES,
                                context.words().say("page.changes"),
                                context.words().say("overview.changes-short")),
                Link.to(context.words().say("overview.feed-link"), Feed.PATH),
                history.events().stream()
                        .map(event -> new Change(
                                event.on().toString(),
                                Link.to(event.study().evidence().study().question(), event.address()),
                                event.what(),
                                event.why(),
                                ""))
                        .toList());
        sink.put(Address.CHANGES, context.render("changes", page));
    }
}
