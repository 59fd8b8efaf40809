package umbercard.screen;

import java.util.Optional;
import java.util.logging.Logger;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Skips a test class, aloud, where no window can be opened. */
public final class NeedsScreen implements ExecutionCondition {
    private static final Logger LOG = Logger.getLogger(NeedsScreen.class.getName());

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        Optional<String> missing = Screen.missing();
        if (missing.isEmpty()) {
            return ConditionEvaluationResult.enabled("there is a screen");
        }
        String sentence = "SKIPPED: " + context.getDisplayName() + " opens a window, and " + missing.get()
                + ". Run it on Java 17, or where there is a display.";
        LOG.warning(sentence);
        return ConditionEvaluationResult.disabled(sentence);
    }
}
