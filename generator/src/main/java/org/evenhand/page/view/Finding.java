package org.evenhand.page.view;

/**
 * What a check says.
 *
 * @param id as {@link Address#finding} forms it
 * @param rule its id, leading to its explanation
 * @param severity {@code withhold}, {@code refuse}, {@code caveat} or {@code note}
 * @param outcome {@code found}, {@code not-checkable} or {@code waived}
 * @param place file, line and column within the results folder; empty for none
 * @param message what is wrong, with value and limit
 * @param origin where the limit comes from; empty if there is no limit
 * @param advice what to do; empty for none
 * @param waiver who waived it, when and why; empty unless waived
 */
public record Finding(
        String id,
        Link rule,
        String severity,
        String outcome,
        String place,
        String message,
        String origin,
        String advice,
        String waiver) {}
