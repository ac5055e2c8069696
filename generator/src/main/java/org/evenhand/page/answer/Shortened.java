package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Link;

/** Caveats beside a figure that has room for few: the worst in full, and how many more there are. */
final class Shortened {

    /** So many stand in full. */
    private static final int MOST = 2;

    private Shortened() {}

    /** @param caveats worst first */
    static List<Caveat> of(Answer answer, List<Caveat> caveats) {
        if (caveats.size() <= MOST) {
            return caveats;
        }
        int more = caveats.size() - 1;
        List<Caveat> few = new ArrayList<>(caveats.subList(0, 1));
        few.add(new Caveat(
                "",
                answer.words().say("quote.more", more, answer.words().inWords(more)),
                Optional.of(Link.to(answer.words().say("page.section-findings"), answer.page() + "#findings"))));
        return List.copyOf(few);
    }
}
