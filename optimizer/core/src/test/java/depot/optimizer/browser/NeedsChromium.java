package depot.optimizer.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledIf;

/** Tests of this class are skipped, and say so, where there is no Chromium. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("chromium")
@EnabledIf(value = "depot.optimizer.browser.Chromium#installed", disabledReason = "chromium is not installed")
public @interface NeedsChromium {}
