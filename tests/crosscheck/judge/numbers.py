"""Numbers of two kinds with the same face: exact (SymPy's algebraic fields) and rounded (mpmath, 60 digits).

A document whose directions are all multiples of 15 degrees or runs and rises with few different roots is worked exactly in the
field Q(sqrt d1, sqrt d2, ...); any other is worked in decimals of 60 digits, where less than 1e-40 of the largest counts as zero.
"""

from fractions import Fraction

import mpmath
from sympy import QQ, Rational, cos, expand, factorint, pi, sin, sqrt, sstr

DIGITS = 60
ALMOST_ZERO = mpmath.mpf(10) ** -40
MOST_ROOTS = 3
mpmath.mp.dps = DIGITS


def square_free(n):
    """The square-free part of a positive whole number, and the root of the rest: n = part * root**2."""
    part, root = 1, 1
    for prime, power in factorint(n).items():
        root *= prime ** (power // 2)
        part *= prime ** (power % 2)
    return part, root


def roots_of_angle(degrees):
    """The whole numbers whose roots the sine and cosine of a multiple of 15 degrees need."""
    rest = int(degrees) % 90
    return {0: [], 30: [3], 60: [3], 45: [2]}.get(rest, [2, 3])


class Exact:
    """Elements of Q with a few roots adjoined; every comparison with zero is exact."""

    exact = True

    def __init__(self, radicands):
        self.generators = independent(radicands)
        self.field = QQ.algebraic_field(*[sqrt(d) for d in self.generators]) if self.generators else QQ
        self.cache = {}
        self.numeric = mpmath.mpf(str(self.field.ext.evalf(120))) if self.generators else None

    def rational(self, value):
        value = Fraction(value)
        return self.field.convert(QQ(value.numerator, value.denominator))

    def from_sympy(self, expression):
        key = expression
        if key not in self.cache:
            self.cache[key] = self.field.from_sympy(expand(expression))
        return self.cache[key]

    def root(self, value):
        """The square root of a rational number that the field has; None if it has not."""
        value = Fraction(value)
        part, whole = square_free(value.numerator * value.denominator) if value else (1, 0)
        size = self.rational(Fraction(whole, value.denominator))
        if part == 1:
            return size
        found = self.single_root(part)
        return None if found is None else size * found

    def single_root(self, part):
        """The root of a square-free number as a product of the generators."""
        for mask in range(1, 2 ** len(self.generators)):
            chosen = [d for i, d in enumerate(self.generators) if mask >> i & 1]
            product = 1
            for d in chosen:
                product *= d
            rest, whole = square_free(product)
            if rest == part:
                made = self.rational(Fraction(1, whole))
                for d in chosen:
                    made = made * self.from_sympy(sqrt(d))
                return made
        return None

    def turn(self, degrees):
        """Cosine and sine."""
        angle = Rational(int(degrees)) * pi / 180
        return self.from_sympy(cos(angle)), self.from_sympy(sin(angle))

    def is_zero(self, value):
        return not value

    def size(self, value):
        """The value to about 100 digits."""
        with mpmath.workdps(110):
            if not self.generators:
                return mpmath.mpf(int(value.numerator)) / int(value.denominator)
            total = mpmath.mpf(0)
            for coefficient in value.rep:
                total = total * self.numeric + mpmath.mpf(int(coefficient.numerator)) / int(coefficient.denominator)
            return total

    def sign(self, value):
        if not value:
            return 0
        return 1 if self.size(value) > 0 else -1

    def text(self, value):
        return sstr(expand(self.field.to_sympy(value)))

    def decimal(self, value):
        return mpmath.nstr(self.size(value), 17, min_fixed=-6, max_fixed=17) if value else "0.0"


class Rounded:
    """Decimals of 60 digits."""

    exact = False

    def rational(self, value):
        value = Fraction(value)
        return mpmath.mpf(value.numerator) / value.denominator

    def root(self, value):
        return mpmath.sqrt(self.rational(value))

    def turn(self, degrees):
        angle = self.rational(degrees) * mpmath.pi / 180
        return mpmath.cos(angle), mpmath.sin(angle)

    def is_zero(self, value):
        return abs(value) < ALMOST_ZERO

    def size(self, value):
        return value

    def sign(self, value):
        return 0 if self.is_zero(value) else 1 if value > 0 else -1

    def text(self, value):
        return None

    def decimal(self, value):
        return "0.0" if self.is_zero(value) else mpmath.nstr(value, 17, min_fixed=-6, max_fixed=17)


def independent(radicands):
    """Those of the square-free numbers whose roots are not products of roots of earlier ones."""
    kept, products = [], {1}
    for d in sorted(set(radicands)):
        if d in products:
            continue
        kept.append(d)
        products |= {square_free(d * p)[0] for p in products}
    return kept
