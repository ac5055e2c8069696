package org.evenhand.command.takein;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.evenhand.command.UnusableException;

/** Sets the moments of a log one after the other on one time scale, across midnight and the change of summer time. */
final class Clock {

    private static final long HOUR_S = 3600;
    private static final long HALF_DAY_S = 12 * HOUR_S;
    private static final BigDecimal NANOS = BigDecimal.valueOf(1_000_000_000L);

    private final String log;
    private final Optional<ZoneId> zone;
    private final Optional<LocalDate> date;
    private final List<String> doubts;
    private final List<BigDecimal> seconds = new ArrayList<>();
    private LocalDateTime before;
    private Instant previous;
    private Instant first;
    private OffsetDateTime started;
    private long day;

    Clock(String log, Optional<ZoneId> zone, Optional<LocalDate> date, List<String> doubts) {
        this.log = log;
        this.zone = zone;
        this.date = date;
        this.doubts = doubts;
    }

    /** Takes the moment of the next row. */
    void add(Moments.Moment moment, int line) {
        LocalDateTime local = moment.local().orElseGet(() -> ofDay(moment, line));
        Instant instant;
        if (moment.offset().isPresent()) {
            instant = local.toInstant(moment.offset().get());
            begin(local.atOffset(moment.offset().get()));
        } else if (zone.isPresent() && (moment.date().isPresent() || date.isPresent())) {
            OffsetDateTime at = inZone(local, line);
            instant = at.toInstant();
            begin(at);
        } else {
            instant = local.toInstant(ZoneOffset.UTC);
            lookForJump(local, line);
        }
        first = first == null ? instant : first;
        previous = instant;
        before = local;
        seconds.add(BigDecimal.valueOf(instant.getEpochSecond() - first.getEpochSecond())
                .add(BigDecimal.valueOf((long) instant.getNano() - first.getNano())
                        .divide(NANOS)));
    }

    /** Seconds since the first. */
    List<BigDecimal> seconds() {
        return seconds;
    }

    /** When the first was, where the offset from UTC is known. */
    Optional<OffsetDateTime> started() {
        return Optional.ofNullable(started);
    }

    private void begin(OffsetDateTime at) {
        started = first == null ? at : started;
    }

    /** A bare time of day: half a day back means that midnight has passed. */
    private LocalDateTime ofDay(Moments.Moment moment, int line) {
        LocalDateTime local = date.orElse(LocalDate.EPOCH).plusDays(day).atTime(moment.time());
        if (before != null && java.time.Duration.between(local, before).getSeconds() > HALF_DAY_S) {
            day++;
            local = local.plusDays(1);
        }
        return local;
    }

    private OffsetDateTime inZone(LocalDateTime local, int line) {
        List<ZoneOffset> offsets = zone.orElseThrow().getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            doubts.add("line " + line + ": " + local + " does not exist in " + zone.get() + "; is it another zone?");
            return local.atZone(zone.get()).toOffsetDateTime();
        }
        OffsetDateTime summer = local.atOffset(offsets.get(0));
        // The hour that comes twice: once the clock has gone back, the later offset holds.
        boolean again =
                offsets.size() > 1 && previous != null && summer.toInstant().isBefore(previous);
        return again ? local.atOffset(offsets.get(1)) : summer;
    }

    private void lookForJump(LocalDateTime local, int line) {
        if (before == null) {
            return;
        }
        long stepS = java.time.Duration.between(before, local).getSeconds();
        if (stepS <= -HOUR_S / 2 && stepS >= -HOUR_S) {
            throw new UnusableException(log + ", line " + line + ": the clock goes back from " + before + " to " + local
                    + "; if summer time ended there, give --zone, such as --zone Europe/Paris"
                    + (date.isEmpty() ? " (and --date, if the log has times of day only)" : ""));
        }
        if (stepS >= HOUR_S && stepS <= HOUR_S + HOUR_S / 2 && seconds.size() > 1) {
            doubts.add("line " + line + ": the clock jumps from " + before + " to " + local
                    + "; if summer time began there, give --zone, such as --zone Europe/Paris");
        }
    }
}
