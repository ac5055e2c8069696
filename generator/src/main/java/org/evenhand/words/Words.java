package org.evenhand.words;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.evenhand.model.Publication;

/**
 * What the program says in one language: messages by key, and how the language writes numbers, days, lists and quotations.
 * For people only: what machines read keeps the decimal point and ISO dates in every language.
 *
 * <p>A key is {@code room.name}, and the messages of a room stand in one file for each language. Immutable towards its
 * callers and safe for use by many threads.
 */
public final class Words {

    /** The languages that there are words for, as IETF tags; the first stands in for all others. */
    public static final List<String> LANGUAGES = List.of("en", "de");

    private static final Map<String, Words> LOADED = new ConcurrentHashMap<>();
    private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

    private final String language;
    private final Map<String, Map<String, Message>> rooms = new ConcurrentHashMap<>();

    private Words(String language) {
        this.language = language;
    }

    /**
     * The words of a language.
     *
     * @param tag an IETF language tag; script and region make no difference
     * @return those of the language, or English where there are none
     */
    public static Words in(String tag) {
        String primary = tag.toLowerCase(Locale.ROOT).split("-", 2)[0];
        return LOADED.computeIfAbsent(LANGUAGES.contains(primary) ? primary : LANGUAGES.get(0), Words::new);
    }

    /** The words of English. */
    public static Words english() {
        return in("en");
    }

    /** Those of the language of a publication; English where it could not be read. */
    public static Words of(Optional<Publication> publication) {
        return publication.map(p -> in(p.language())).orElseGet(Words::english);
    }

    /** The tag of the language: one of {@link #LANGUAGES}. */
    public String language() {
        return language;
    }

    /**
     * A message.
     *
     * @param key {@code room.name}
     * @param arguments texts and whole numbers, in the order in which the message counts them
     * @throws IllegalArgumentException if there is no such message, or it takes another number of arguments
     */
    public String say(String key, Object... arguments) {
        Message message = room(key).get(key);
        if (message == null) {
            throw new IllegalArgumentException("no words for " + key + " in " + language);
        }
        return message.with(arguments);
    }

    /** Whether there is a message for the key. */
    public boolean has(String key) {
        return room(key).containsKey(key);
    }

    /** A figure, or a text with figures, that was written with decimal points: "31.2 K" is "31,2 K" in German. */
    public String number(String written) {
        return POINT.matcher(written).replaceAll(say("language.decimal"));
    }

    /** A day as the language writes it: "2 March 2026". */
    public String day(LocalDate day) {
        int month = day.getMonthValue();
        return say(
                "language.day",
                day.getYear(),
                twoDigits(month),
                twoDigits(day.getDayOfMonth()),
                say("language.month." + month),
                day.getDayOfMonth());
    }

    /** "a", "a and b", "a, b and c"; empty for none. */
    public String list(List<String> parts) {
        return joined(parts, say("language.and"));
    }

    /** "a", "a or b", "a, b or c"; empty for none. */
    public String either(List<String> parts) {
        return joined(parts, say("language.or"));
    }

    /** A text in the quotation marks of the language. */
    public String quoted(String text) {
        return say("language.quoted", text);
    }

    /** A name, as it stands within a line and not at its beginning: English writes it small, German writes nouns as they are. */
    public String within(String name) {
        boolean small = say("language.within").equals("small") && !name.isEmpty();
        return small ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }

    /** "none", "one", "two" and so on to "twelve", then digits: for numbers within a sentence. */
    public String inWords(int number) {
        return number >= 0 && number <= 12 ? say("language.number." + number) : Integer.toString(number);
    }

    private static String joined(List<String> parts, String before) {
        int last = parts.size() - 1;
        return last < 1 ? String.join("", parts) : String.join(", ", parts.subList(0, last)) + before + parts.get(last);
    }

    private static String twoDigits(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }

    private Map<String, Message> room(String key) {
        String room = key.substring(0, Math.max(0, key.indexOf('.')));
        return rooms.computeIfAbsent(room, name -> Bundle.read(language, name));
    }
}
