from fractions import Fraction

from bezelbook.reasoning.electric.pi import PI_HIGH, PI_LOW


def arctangent_of_one_by(number: int, terms: int) -> Fraction:
    """The first terms of its series, each sum on the other side of it."""
    return sum(
        (Fraction((-1) ** term, (2 * term + 1) * number ** (2 * term + 1)) for term in range(terms)), Fraction(0)
    )


def test_pi_lies_between_its_bounds() -> None:
    # Machin, 1706: pi is 16·arctan(1/5) - 4·arctan(1/239); an odd number of terms is too much, an even one too little.
    most = 16 * arctangent_of_one_by(5, 15) - 4 * arctangent_of_one_by(239, 6)
    least = 16 * arctangent_of_one_by(5, 16) - 4 * arctangent_of_one_by(239, 5)
    assert least >= PI_LOW
    assert most > least
    assert most <= PI_HIGH
    assert Fraction(1, 10**16) == PI_HIGH - PI_LOW
