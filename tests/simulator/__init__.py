"""Made-up cars whose true measures are known, and the people who work on them and write down what they saw."""
