"""One body at rest on one or two ropes whose place is not given: by their lengths, or by letting it swing on one rope."""

from fractions import Fraction

from judge.numbers import Exact, square_free


def needed(setup):
    """What the ropes have to pull with altogether, as fractions: m times (ax, g + ay)."""
    body = setup.document["bodies"][0]
    own = body.get("acceleration", setup.document.get("frame", {}))
    gravity = Fraction(setup.document["gravity"])
    mass = Fraction(body["mass"]) if "mass" in body else Fraction(body["weight"]) / gravity
    return mass * Fraction(own.get("x", 0)), mass * (gravity + Fraction(own.get("y", 0)))


def field_with(*squares):
    """A field that has the roots of these rational numbers."""
    parts = [square_free(q.numerator * q.denominator)[0] for q in squares if q > 0]
    return Exact({p for p in parts if p != 1})


def on_one(ropes, index, force):
    """Hanging on one rope alone: its tension if no other rope is too short for that."""
    fx, fy = force
    square = fx**2 + fy**2
    num = field_with(square)
    size = num.root(square)
    x, y, length = ropes[index]
    at = [num.rational(p) - num.rational(length * f) / size for p, f in ((x, fx), (y, fy))]
    for i, (ox, oy, most) in enumerate(ropes):
        if i == index:
            continue
        apart = (num.rational(ox) - at[0]) ** 2 + (num.rational(oy) - at[1]) ** 2
        if num.sign(apart - num.rational(most**2)) > 0:
            return None
    return num, size


def on_both(ropes, force):
    """Both ropes straight: the two tensions, at whichever meeting point of the two circles both ropes pull."""
    (ax, ay, la), (bx, by, lb) = ropes
    dx, dy = bx - ax, by - ay
    square = dx**2 + dy**2
    along = (la**2 - lb**2 + square) / (2 * square)
    across = la**2 / square - along**2
    if across < 0:
        return None
    num = field_with(across)
    high = num.root(across) if across > 0 else num.rational(0)
    for side in (1, -1):
        px = num.rational(ax + along * dx) + num.rational(-side * dy) * high
        py = num.rational(ay + along * dy) + num.rational(side * dx) * high
        ua = [(num.rational(c) - p) / num.rational(la) for c, p in ((ax, px), (ay, py))]
        ub = [(num.rational(c) - p) / num.rational(lb) for c, p in ((bx, px), (by, py))]
        turn = ua[0] * ub[1] - ua[1] * ub[0]
        if num.is_zero(turn):
            continue
        fx, fy = (num.rational(f) for f in force)
        tensions = [(fx * ub[1] - fy * ub[0]) / turn, (ua[0] * fy - ua[1] * fx) / turn]
        if all(num.sign(t) >= 0 for t in tensions):
            return num, tensions
    return None


def weightless(ropes, ids):
    """Nothing has to pull; there only has to be a place that every rope reaches. Which is straight is left open."""
    if len(ropes) == 2:
        (ax, ay, la), (bx, by, lb) = ropes
        if (ax - bx) ** 2 + (ay - by) ** 2 > (la + lb) ** 2:
            return None
    num = field_with()
    return num, {}, {i: num.rational(0) for i in ids}


def by_lengths(setup):
    """States and answers of a body on ropes of given anchors and lengths; None where it can hang nowhere."""
    documents = setup.document["ropes"]
    ids = [r["id"] for r in documents]
    ropes = [
        (Fraction(r["anchor"]["x"]), Fraction(r["anchor"]["y"]), Fraction(r["length"])) for r in documents
    ]
    force = needed(setup)
    if force == (0, 0):
        return weightless(ropes, ids)
    both = on_both(ropes, force) if len(ropes) == 2 else None
    if both is not None:
        num, tensions = both
        return num, {i: "taut" for i in ids}, dict(zip(ids, tensions))
    for index in range(len(ropes)):
        found = on_one(ropes, index, force)
        if found is not None:
            num, size = found
            states = {i: "taut" if k == index else "slack" for k, i in enumerate(ids)}
            return num, states, {i: size if k == index else num.rational(0) for k, i in enumerate(ids)}
    return None


def is_plain_hanging(document):
    """Whether a document is one body on one or two ropes of given directions, and nothing else."""
    moving = any(Fraction(part) != 0 for part in document.get("frame", {}).values())
    extras = moving or any(document.get(k) for k in ("surfaces", "pushes")) or document.get("units", "SI") != "SI"
    ropes = document.get("ropes", [])
    body = document["bodies"][0]
    return (
        not extras
        and len(document["bodies"]) == 1
        and 1 <= len(ropes) <= 2
        and all("direction" in r for r in ropes)
        and "motion" not in body
        and "at" not in body
    )


def swung(setup):
    """A plain hanging body whose ropes cannot both pull where it was drawn: it swings until one of them carries it all.

    That is so if just one of the two would have to push; None otherwise. A body that has to be pulled down cannot hang
    from a rope that leads up: it would have to swing to the other side of the support.
    """
    if len(setup.ropes) != 2:
        return None
    num = setup.num
    (ida, ua), (idb, ub) = [(r["id"], r["pulls"][0][1]) for r in setup.ropes]
    turn = ua[0] * ub[1] - ua[1] * ub[0]
    if num.is_zero(turn):
        return None
    fx, fy = force = needed(setup)
    x, y = num.rational(fx), num.rational(fy)
    tensions = [(x * ub[1] - y * ub[0]) / turn, (ua[0] * y - ua[1] * x) / turn]
    signs = [num.sign(t) for t in tensions]
    if sorted(s < 0 for s in signs) != [False, True]:
        return None
    kept = 0 if signs[1] < 0 else 1
    if fy < 0 and num.sign((ua, ub)[kept][1]) >= 0:
        return None
    square = force[0] ** 2 + force[1] ** 2
    field = field_with(square)
    size, nothing = field.root(square), field.rational(0)
    states = {i: "taut" if k == kept else "slack" for k, i in enumerate((ida, idb))}
    return field, states, {i: size if k == kept else nothing for k, i in enumerate((ida, idb))}
