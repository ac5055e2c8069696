package org.evenhand.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.page.view.Markup;

/**
 * Shows a record to a template as a map from component names to values: text, booleans and whole numbers as they are,
 * records as maps, lists as lists, {@link Markup} as markup that is not escaped again, an empty Optional as a missing
 * entry. Templates thus meet stable names and no methods, and can reach nothing but data.
 */
final class ViewMap {
    private ViewMap() {}

    /**
     * @throws IllegalArgumentException if a component is null or of a kind that templates are not to see; the message
     *     names the record and the component
     */
    static Map<String, Object> of(Record view) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (RecordComponent component : view.getClass().getRecordComponents()) {
            Object value = read(component, view);
            if (value instanceof Optional<?> optional) {
                if (optional.isEmpty()) continue;
                value = optional.get();
            }
            map.put(component.getName(), shown(value, view, component));
        }
        return map;
    }

    private static Object shown(Object value, Record view, RecordComponent component) {
        if (value instanceof Markup markup) return printed(markup);
        if (value instanceof Record record) return of(record);
        if (value instanceof List<?> list)
            return list.stream().map(each -> shown(each, view, component)).toList();
        if (value instanceof String || value instanceof Boolean || value instanceof Integer) return value;
        throw new IllegalArgumentException(view.getClass().getSimpleName() + "." + component.getName() + " is "
                + (value == null ? "null" : "a " + value.getClass().getName()));
    }

    private static Object printed(Markup markup) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(markup.html());
        } catch (TemplateModelException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Object read(RecordComponent component, Record view) {
        try {
            return component.getAccessor().invoke(view);
        } catch (IllegalAccessException | InvocationTargetException cause) {
            throw new IllegalArgumentException(
                    "cannot read " + view.getClass().getName() + "." + component.getName(), cause);
        }
    }
}
