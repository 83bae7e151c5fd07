package depot.optimizer.model;

/** On what terms a day enters a model: the margins that a replay has asked for, and whether it may fall short. */
public record DayTerms(Tightening tightening, ShortagePolicy shortage) {}
