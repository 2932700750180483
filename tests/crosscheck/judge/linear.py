"""Linear equations and inequalities over either kind of number.

An affine expression is a dict from variable names to coefficients; the name 1 stands for the constant.
"""

CONSTANT = 1


def plus(num, *terms):
    """The sum of affine expressions, each given as (factor, expression)."""
    total = {}
    for factor, expression in terms:
        for name, coefficient in expression.items():
            total[name] = total[name] + factor * coefficient if name in total else factor * coefficient
    return {name: c for name, c in total.items() if not num.is_zero(c)}


def solve(num, equations, variables):
    """Every variable as an affine expression of those left free; None if the equations contradict each other.

    Each equation is an affine expression that has to be zero. Variables late in the list are left free first.
    """
    rows = [dict(e) for e in equations]
    pivots = {}
    for variable in variables:
        candidates = [r for r in rows if variable in r]
        if not candidates:
            continue
        row = candidates[0] if num.exact else max(candidates, key=lambda r: abs(r[variable]))
        rows = [r for r in rows if r is not row]
        lead = row[variable]
        row = {name: c / lead for name, c in row.items()}
        row[variable] = num.rational(1)
        rows = [without(num, r, row, variable) for r in rows]
        pivots = {v: without(num, r, row, variable) for v, r in pivots.items()}
        pivots[variable] = row
    if any(CONSTANT in r for r in rows):
        return None
    minus = num.rational(-1)
    solution = {v: {n: minus * c for n, c in r.items() if n != v} for v, r in pivots.items()}
    for variable in variables:
        solution.setdefault(variable, {variable: num.rational(1)})
    return solution


def without(num, row, by, variable):
    """A row with a variable taken out by means of another row, whose coefficient of it is one."""
    if variable not in row:
        return row
    changed = plus(num, (num.rational(1), row), (-row[variable], by))
    changed.pop(variable, None)
    return changed


def put(num, expression, solution):
    """An affine expression with solved variables put in."""
    one = num.rational(1)
    return plus(
        num,
        *[(c, {CONSTANT: one} if name == CONSTANT else solution[name]) for name, c in expression.items()],
    )


def bounds(num, inequalities, quantity):
    """The least and the largest value of an affine expression where all the inequalities (expression >= 0) hold.

    None where they cannot all hold; a bound that does not exist is None. By eliminating variable after variable
    (Fourier and Motzkin).
    """
    one = num.rational(1)
    # q stands for the quantity: q - quantity >= 0 and quantity - q >= 0.
    rows = [dict(i) for i in inequalities]
    rows.append(plus(num, (one, {"?": one}), (-one, quantity)))
    rows.append(plus(num, (one, quantity), (-one, {"?": one})))
    names = sorted({n for r in rows for n in r if n not in (CONSTANT, "?")})
    for name in names:
        above = [r for r in rows if name in r and num.sign(r[name]) > 0]
        below = [r for r in rows if name in r and num.sign(r[name]) < 0]
        rows = [r for r in rows if name not in r]
        for a in above:
            for b in below:
                row = plus(num, (-b[name], a), (a[name], b))
                row.pop(name, None)
                rows.append(row)
        rows = distinct(num, rows)
    low = high = None
    for row in rows:
        slope, rest = row.get("?"), row.get(CONSTANT, num.rational(0))
        if slope is None:
            if num.sign(rest) < 0:
                return None
        elif num.sign(slope) > 0:
            value = -rest / slope
            low = value if low is None or num.sign(value - low) > 0 else low
        else:
            value = -rest / slope
            high = value if high is None or num.sign(value - high) < 0 else high
    if low is not None and high is not None and num.sign(high - low) < 0:
        return None
    return low, high


def distinct(num, rows):
    """Rows scaled alike, each once."""
    kept = {}
    for row in rows:
        if not row:
            continue
        lead = next((row[n] for n in sorted(row, key=str)), None)
        size = lead if num.sign(lead) > 0 else -lead
        scaled = {n: c / size for n, c in row.items()}
        key = tuple((n, str(num.size(c))[:40]) for n, c in sorted(scaled.items(), key=lambda item: str(item[0])))
        kept[key] = scaled
    return list(kept.values())
