package depot.optimizer.plan;

import java.time.DayOfWeek;

/** One weekday in one season. */
public record SeasonDay(String season, DayOfWeek day) {}
