package org.evenhand.check.rule;

import java.util.List;
import org.evenhand.check.Rule;

/** The rules on power, energy and clock, in the order in which they are listed. */
public final class PowerRules {

    public static final List<Rule> ALL = List.of(
            new BoundaryMixed(),
            new MeterUncertain(),
            new BelowResolution(),
            new PowerUnsteady(),
            new EnergyMismatch(),
            new IdleBasisMixed(),
            new SupplyExceeded(),
            new VoltageSag(),
            new Undervoltage(),
            new Throttled(),
            new SettingNotReached(),
            new RaisedClockUnlabelled());

    private PowerRules() {}
}
