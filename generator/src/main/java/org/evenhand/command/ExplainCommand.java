package org.evenhand.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.evenhand.check.Catalogue;
import org.evenhand.check.Explanation;
import org.evenhand.check.Group;
import org.evenhand.check.RuleFacts;
import org.evenhand.read.NearMiss;
import org.evenhand.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells what a rule means. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description =
                "Tells what a rule means, why it matters, how to mend what it finds; without a rule, lists them all.",
        footer = {"", "Example: evenhand explain ambient-spread"})
final class ExplainCommand implements Callable<Integer> {

    private final Streams streams;

    @Parameters(
            paramLabel = "RULE",
            arity = "0..1",
            completionCandidates = RuleNames.class,
            description = "the rule's name, as it stands in brackets in a finding")
    private String rule;

    ExplainCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (rule == null) {
            list();
            return 0;
        }
        streams.out().print(Explanation.of(known(rule)).text());
        return 0;
    }

    /** The rule of this name, or a message that names the nearest. */
    static RuleFacts known(String rule) {
        return Catalogue.find(rule).orElseThrow(() -> {
            List<String> names = Catalogue.facts().stream().map(RuleFacts::id).toList();
            String hint = NearMiss.among(rule, names)
                    .map(n -> "did you mean “" + n + "”?")
                    .orElse("“evenhand explain” lists them");
            return new UnusableException("there is no rule “" + rule + "”; " + hint);
        });
    }

    private void list() {
        Group group = null;
        for (RuleFacts facts : Catalogue.facts()) {
            if (facts.group() != group) {
                streams.out()
                        .println((group == null ? "" : "\n") + facts.group().title());
                group = facts.group();
            }
            streams.out()
                    .println("  " + pad(facts.id(), 24) + pad(facts.severity().word(), 10)
                            + facts.finds(Words.english()));
        }
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }
}
