package org.evenhand.page;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.evenhand.words.Words;

/** The two functions that every template has besides its view: {@code say} gives words, {@code day} writes a date. */
final class TemplateWords {

    private TemplateWords() {}

    /** The functions by name, in a language. */
    static Map<String, Object> in(Words words) {
        TemplateMethodModelEx say = given -> said(words, texts(given));
        TemplateMethodModelEx day = given -> day(words, texts(given));
        return Map.of("say", say, "day", day);
    }

    private static String said(Words words, List<String> given) throws TemplateModelException {
        if (given.isEmpty()) throw new TemplateModelException("say needs a key");
        Object[] arguments = given.subList(1, given.size()).toArray();
        return checked(() -> words.say(given.get(0), arguments));
    }

    /** A day in ISO 8601 as the language writes it; what begins with no such day stays as it is. */
    private static String day(Words words, List<String> given) throws TemplateModelException {
        if (given.size() != 1) throw new TemplateModelException("day takes one date");
        String written = given.get(0);
        return written.matches("\\d{4}-\\d\\d-\\d\\d") ? checked(() -> words.day(LocalDate.parse(written))) : written;
    }

    private static String checked(Supplier<String> words) throws TemplateModelException {
        try {
            return words.get();
        } catch (IllegalArgumentException cause) {
            throw new TemplateModelException(cause.getMessage(), cause);
        }
    }

    private static List<String> texts(List<?> given) throws TemplateModelException {
        List<String> texts = new ArrayList<>();
        for (Object each : given) {
            if (each instanceof TemplateScalarModel text) {
                texts.add(text.getAsString());
            } else if (each instanceof TemplateNumberModel number) {
                texts.add(number.getAsNumber().toString());
            } else {
                throw new TemplateModelException("neither text nor a number: " + each);
            }
        }
        return texts;
    }
}
