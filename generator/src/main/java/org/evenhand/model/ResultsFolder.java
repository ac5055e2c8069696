package org.evenhand.model;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.stream.Stream;

/**
 * All that a results folder says.
 *
 * @param publication absent if it could not be read, in which case nothing can be published
 * @param items by id
 * @param instruments by id
 * @param methods by id
 * @param studies by id, those that could be read
 * @param broken studies that could not be read, in whole or in part
 * @param brokenRuns the runs of those that could be read themselves, so that their logs are looked at all the same
 * @param seals sealed versions of answers by study, the oldest first; the study itself may be gone
 * @param findings what was wrong with the files, sorted
 * @param digests of the structured files as they were read, by path: SHA-256, 64 hexadecimal digits
 * @param limits within which it was read, and within which what belongs to it is read later
 */
public record ResultsFolder(
        Optional<Publication> publication,
        SortedMap<String, Item> items,
        SortedMap<String, Instrument> instruments,
        SortedMap<String, Method> methods,
        SortedMap<String, Study> studies,
        SortedSet<String> broken,
        List<Run> brokenRuns,
        SortedMap<String, List<Seal>> seals,
        List<Finding> findings,
        SortedMap<String, String> digests,
        Limits limits) {

    public ResultsFolder {
        items = Collections.unmodifiableSortedMap(items);
        instruments = Collections.unmodifiableSortedMap(instruments);
        methods = Collections.unmodifiableSortedMap(methods);
        studies = Collections.unmodifiableSortedMap(studies);
        broken = Collections.unmodifiableSortedSet(broken);
        brokenRuns = List.copyOf(brokenRuns);
        seals = Collections.unmodifiableSortedMap(seals);
        findings = List.copyOf(findings);
        digests = Collections.unmodifiableSortedMap(digests);
    }

    /** The sealed versions of a study's answer, the oldest first. */
    public List<Seal> seals(String study) {
        return seals.getOrDefault(study, List.of());
    }

    /** The same folder with further findings, all sorted. */
    public ResultsFolder with(List<Finding> further) {
        List<Finding> all = Stream.concat(findings.stream(), further.stream())
                .sorted()
                .distinct()
                .toList();
        return new ResultsFolder(
                publication, items, instruments, methods, studies, broken, brokenRuns, seals, all, digests, limits);
    }
}
