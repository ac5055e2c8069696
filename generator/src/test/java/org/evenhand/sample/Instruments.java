package org.evenhand.sample;

/** Which instrument gave which column or reading, as the run files say it. */
final class Instruments {

    static final Fields SOAK = Fields.of(
            "temperature", "die-sensor",
            "clock", "clock-counter",
            "power", "dc-meter-1",
            "ambient", "ambient-probe",
            "frames", "frame-counter");

    static final Fields BATTERY = Fields.of(
            "temperature", "die-sensor",
            "clock", "clock-counter",
            "power", "dc-meter-1",
            "ambient", "ambient-probe",
            "delay", "workload-clock");

    static final Fields CABLE = Fields.of(
            "temperature", "die-sensor",
            "clock", "clock-counter",
            "power", "dc-meter-1",
            "voltage", "dc-volts-1",
            "frames", "frame-counter",
            "encode-time", "workload-clock");

    static final Fields CLOCK = Fields.of(
            "temperature", "die-sensor",
            "clock", "clock-counter",
            "power", "dc-meter-1",
            "ambient", "ambient-probe",
            "frames", "frame-counter",
            "encode-time", "workload-clock");

    private Instruments() {}
}
