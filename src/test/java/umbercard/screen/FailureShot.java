package umbercard.screen;

import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Takes a picture of the window of a test that failed, before it closes. */
final class FailureShot implements AfterTestExecutionCallback {
    @Override
    public void afterTestExecution(ExtensionContext context) {
        if (context.getExecutionException().isPresent() && context.getRequiredTestInstance() instanceof OnScreen test) {
            test.shot("failed-" + context.getRequiredTestMethod().getName());
        }
    }
}
