"""Bounds on pi that whole numbers can be worked with."""

from fractions import Fraction

# The first sixteen decimals of pi, and one more in the last place: pi lies between the two.
PI_LOW = Fraction(31_415_926_535_897_932, 10**16)
PI_HIGH = Fraction(31_415_926_535_897_933, 10**16)
