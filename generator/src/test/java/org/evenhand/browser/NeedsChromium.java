package org.evenhand.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A test that is skipped, and says so, where there is no Chromium. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsChromium.Condition.class)
public @interface NeedsChromium {

    /** Asks for the program before the test is set up. */
    final class Condition implements ExecutionCondition {

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (Chromium.isPresent()) return ConditionEvaluationResult.enabled("Chromium is present");
            String missing = "SKIPPED, no Chromium to look at pages with: " + context.getDisplayName();
            System.err.println(missing);
            return ConditionEvaluationResult.disabled(missing);
        }
    }
}
