package depot.optimizer.advice;

/** What a loosened limit is worth: its answer's difference, below 0 where money is saved. */
public record LimitWorth(Loosening loosening, Answer answer) {}
