"""Which answers hang on a question that the team has not settled, and how often they were asked for."""
