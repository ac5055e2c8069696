package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.evenhand.check.Catalogue;
import org.evenhand.check.CheckedStudy;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.compare.StudyEvidence;
import org.evenhand.compare.Verdict;
import org.evenhand.model.Comparison;
import org.evenhand.model.Finding;
import org.evenhand.model.Instrument;
import org.evenhand.model.Item;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Origin;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Run;
import org.evenhand.model.Study;
import org.evenhand.page.FindingViews;
import org.evenhand.page.Ids;
import org.evenhand.page.PageContext;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Origins;
import org.evenhand.page.words.StudyNames;
import org.evenhand.page.words.Verdicts;
import org.evenhand.words.Words;

/**
 * A study on the way to its page: what every part of the page asks.
 *
 * @param checked the study with its figures and findings
 * @param context of all pages
 * @param names what it calls its levels and measurands
 * @param findings with their addresses on the page
 */
record Answer(CheckedStudy checked, PageContext context, StudyNames names, FindingViews findings) {

    static Answer of(CheckedStudy checked, PageContext context) {
        Study study = checked.evidence().study();
        return new Answer(
                checked,
                context,
                new StudyNames(context.checked().folder(), study, context.words()),
                FindingViews.of(Address.answer(study.id()), checked.findings(), context.words()));
    }

    /** In the language of the publication. */
    Words words() {
        return context.words();
    }

    StudyEvidence evidence() {
        return checked.evidence();
    }

    Study study() {
        return evidence().study();
    }

    ResultsFolder folder() {
        return context.checked().folder();
    }

    /** Path of the page from the site's root. */
    String page() {
        return Address.answer(study().id());
    }

    /** Path of a file beside the page. */
    String beside(String file) {
        return "answers/" + study().id() + "/" + file;
    }

    /** The address of a place on the page, for the world. */
    String permalink(String id) {
        return context.frames().permanent(page()) + "#" + id;
    }

    List<Method> methods() {
        return study().methods().stream().map(folder().methods()::get).toList();
    }

    /** Items of the runs, by id. */
    List<Item> items() {
        TreeSet<String> ids = new TreeSet<>();
        evidence().runs().forEach(r -> ids.add(r.run().item()));
        return ids.stream().map(folder().items()::get).toList();
    }

    /** Instruments that runs name, by id. */
    List<Instrument> instruments() {
        TreeSet<String> ids = new TreeSet<>();
        evidence().runs().forEach(r -> ids.addAll(r.run().instruments().values()));
        return ids.stream()
                .map(folder().instruments()::get)
                .filter(java.util.Objects::nonNull)
                .toList();
    }

    /** The runs whose values count. */
    List<LevelRun> counting() {
        return evidence().runs().stream().filter(r -> r.run().counts()).toList();
    }

    /** The name of a run in addresses of the page: its id, led by its study where another run has the same. */
    String name(Run run) {
        boolean taken = !run.study().equals(study().id())
                && evidence().runs().stream()
                        .anyMatch(r -> r.run().id().equals(run.id())
                                && !r.run().study().equals(run.study()));
        return taken ? run.study() + "/" + run.id() : run.id();
    }

    List<Link> links(List<LevelRun> runs) {
        return runs.stream()
                .sorted(Comparator.comparing(r -> name(r.run()), Ids.ORDER))
                .map(r -> Link.to(
                        name(r.run()), Address.run(r.run().study(), r.run().id())))
                .toList();
    }

    /** The runs behind a level's figure. */
    List<LevelRun> behind(LevelSummary summary) {
        return evidence().runs().stream()
                .filter(r -> r.level().equals(summary.level())
                        && summary.runs().contains(r.run().id()))
                .toList();
    }

    /** The runs behind a comparison: those whose value of its measurand counts at a level that takes part. */
    List<LevelRun> behind(ComparisonResult result) {
        Comparison plan = result.plan();
        List<LevelRun> runs = new ArrayList<>();
        evidence().summaries().stream()
                .filter(s -> plan.measurand().filter(s.measurand()::equals).isPresent())
                .filter(s -> plan.level().isEmpty()
                        || plan.level().get().equals(s.level())
                        || plan.against().filter(s.level()::equals).isPresent())
                .forEach(s -> runs.addAll(behind(s)));
        return runs;
    }

    Optional<LevelSummary> summary(String level, MeasurandId measurand) {
        return evidence().summary(level, measurand);
    }

    Optional<Verdict> verdict(ComparisonResult result) {
        return checked.verdict(result);
    }

    boolean isRefused(ComparisonResult result) {
        return verdict(result).filter(v -> v == Verdict.NOT_COMPARABLE).isPresent();
    }

    List<Finding> refusals(ComparisonResult result) {
        return checked.refusals(result.plan().id());
    }

    String sentence(ComparisonResult result) {
        return new Verdicts(names).sentence(result, verdict(result), refusals(result));
    }

    List<Caveat> caveats(ComparisonResult result) {
        return findings.caveats(checked.caveats(result.plan()));
    }

    List<Caveat> caveats(LevelSummary summary) {
        return findings.caveats(checked.caveats(summary));
    }

    /** What stands in the way of a comparison and what travels with it, as ids of rules, for data. */
    List<String> rules(ComparisonResult result) {
        List<Finding> all = new ArrayList<>(refusals(result));
        all.addAll(checked.caveats(result.plan()));
        return rules(all);
    }

    List<String> rules(LevelSummary summary) {
        return rules(checked.caveats(summary));
    }

    static List<String> rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).distinct().sorted().toList();
    }

    /** The worst caveat in a word or two, for a label; empty if there is none. */
    String worst(List<Caveat> caveats) {
        return caveats.stream()
                .findFirst()
                .flatMap(c -> Catalogue.find(c.rule()))
                .map(facts -> words().within(facts.name(words())))
                .orElse("");
    }

    /** The author's own caveats, as plain sentences. */
    List<String> authorsCaveats() {
        return study().caveats().stream()
                .map(c -> context.prose().plain(c, Optional.of(checked)).strip())
                .filter(c -> !c.isEmpty())
                .toList();
    }

    /** The marks of figures that were not all measured here; empty if all were. */
    String origin(List<LevelRun> runs) {
        TreeSet<Origin> origins = new TreeSet<>();
        runs.forEach(r -> origins.add(r.run().origin()));
        return String.join(
                ", ",
                origins.stream()
                        .map(o -> Origins.mark(o, words()))
                        .filter(m -> !m.isEmpty())
                        .toList());
    }
}
