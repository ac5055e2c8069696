package org.evenhand.check.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import org.evenhand.check.rule.PersonalTraces.Kind;
import org.evenhand.check.rule.PersonalTraces.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Traces of people are found, and what only resembles them is left alone.
 *
 * <p>All names are invented. Public addresses are those of the documentation of the blocks: RFC 1918, RFC 3849, RFC
 * 5737 and RFC 6598 name those that are not public; 9.9.9.9 and 2620:fe::fe are from memory, of a public name service.
 */
class PersonalTracesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            value = {
                "log: /home/robin/soak.csv ¦ HOME_FOLDER ¦ 6",
                "opened \"/Users/robin ambrose/x\" ¦ HOME_FOLDER ¦ 9",
                "C:\\Users\\robin\\soak.csv ¦ HOME_FOLDER ¦ 3",
                "\"C:\\\\Users\\\\robin\" ¦ HOME_FOLDER ¦ 4",
                "wlan0 b8:27:eb:0c:4a:91 up ¦ HARDWARE_ADDRESS ¦ 7",
                "B8-27-EB-0C-4A-91 ¦ HARDWARE_ADDRESS ¦ 1",
                "peer 9.9.9.9:443 ¦ NETWORK_ADDRESS ¦ 6",
                "peer 9.9.9.9, port 443 ¦ NETWORK_ADDRESS ¦ 6",
                "peer 2620:fe::fe ¦ NETWORK_ADDRESS ¦ 6",
                "ssid=Fernhollow-Attic ¦ WIRELESS_NETWORK ¦ 1",
                "ESSID:\"Fernhollow-Attic\" ¦ WIRELESS_NETWORK ¦ 2",
                "\"ssid\": \"Fernhollow-Attic\" ¦ WIRELESS_NETWORK ¦ 2",
                "by robin.ambrose@fernhollow.org. ¦ MAIL_ADDRESS ¦ 4"
            })
    void isFound(String text, Kind kind, int column) {
        Map<Kind, Trace> found = in(text);
        assertEquals(Set.of(kind), found.keySet());
        assertEquals(column, found.get(kind).column());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.5,2026-03-02T09:14:00.250Z,61.204,1800,12:30:45",
                "https://results.example.org/home/robin and docs/Users/x",
                "192.168.0.7, 10.1.2.3, 172.31.0.1, 127.0.0.1, 169.254.1.1, 100.64.0.1",
                "192.0.2.1, 198.51.100.7, 203.0.113.9, 2001:db8::1, fe80::1",
                "firmware 5.10.2.1, version: 4.19.1.2, 1.2.3, 1.2.3.4.5, 300.1.1.1",
                "00:00:00:00:00:00 and ff:ff:ff:ff:ff:ff",
                "the ssid is hidden",
                "trials@example.org, a@b, x @ y.org, 5@10",
                "trials@fernhollow.example.org"
            })
    void isNoTrace(String text) {
        assertEquals(Map.of(), in(text));
    }

    @Test
    void theAddressForErrorsIsMeantToBeRead() {
        byte[] text = "contact: trials@fernhollow.org\nby: robin@fernhollow.org\n".getBytes(StandardCharsets.UTF_8);

        assertEquals(
                Map.of(Kind.MAIL_ADDRESS, new Trace(2, 5, 20, 1)), PersonalTraces.in(text, "trials@fernhollow.org"));
    }

    @Test
    void theFirstOfAKindIsToldAndTheOthersAreCounted() {
        assertEquals(Map.of(Kind.HOME_FOLDER, new Trace(2, 3, 11, 3)), in("x\n  /home/robin\n/home/robin /home/pim\n"));
    }

    @Test
    void hostileBytesDoNotStallIt() {
        for (String part : new String[] {"@", "a@", "/home/", "ssid=", "f:", "1.", "a.a@a."}) {
            byte[] bytes = part.repeat(4_000_000 / part.length()).getBytes(StandardCharsets.ISO_8859_1);
            assertTimeoutPreemptively(Duration.ofSeconds(10), () -> PersonalTraces.in(bytes, ""));
        }
    }

    private static Map<Kind, Trace> in(String text) {
        return PersonalTraces.in(text.getBytes(StandardCharsets.UTF_8), "");
    }
}
