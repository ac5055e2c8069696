package org.evenhand.page.words;

import org.evenhand.model.Hazard;
import org.evenhand.page.view.Caution;

/**
 * What to mind when a method is repeated. The words repeat the usual cautions; local codes, makers' instructions and
 * licensed trades come first.
 */
public final class Hazards {

    private Hazards() {}

    public static Caution caution(Hazard hazard) {
        return switch (hazard) {
            case HOT_SURFACE ->
                new Caution(
                        "Hot surface",
                        "Parts stay hot enough to burn skin for some time after a run. Let them cool before touching them,"
                                + " and keep what can scorch or burn away.");
            case MAINS ->
                new Caution(
                        "Mains voltage",
                        "Use closed, tested equipment with its plug, and do not open it. Work on fixed wiring or inside"
                                + " mains equipment follows the local electrical code and belongs to a licensed"
                                + " electrician.");
            case BATTERY ->
                new Caution(
                        "Battery",
                        "A battery can deliver a current that melts metal, and can catch fire when it is shorted, crushed"
                                + " or wrongly charged. Fuse the lead at the battery, cover the poles, charge as its"
                                + " maker says and with somebody near. Local rules on storing and disposing of it apply.");
            case RAISED_VOLTAGE ->
                new Caution(
                        "Raised voltage or clock",
                        "Running a part above its maker's figures can age or destroy it at once, and may void what the"
                                + " maker promises. Raise it in small steps, watch the temperature, and use parts that you"
                                + " can afford to lose.");
            case ROTATING_FAN ->
                new Caution(
                        "Rotating fan",
                        "Keep fingers, hair and cables away from the blades, also while they run down after switching"
                                + " off.");
            case LOUD_SOUND ->
                new Caution(
                        "Loud sound",
                        "Loud sound can damage hearing for good. Wear hearing protection, keep the time short, and follow"
                                + " the local rules for noise at work.");
        };
    }
}
