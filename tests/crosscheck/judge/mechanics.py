"""The equations and inequalities of a set-up in one state of its ropes and contacts.

Unknown are the two parts of every body's acceleration seen from the ground ("x:id", "y:id"), the tension of every rope
("T:id"), the normal force and the friction of every contact ("N:id", "f:id") and the pushes of no given size ("P:id").
Newton's second law is written along x and y for every body; what is known of the motion, and what the state says of ropes
and contacts, are further equations on the same unknowns.
"""

from judge.linear import CONSTANT, plus


def variables_of(setup):
    names = [f"{axis}:{b}" for b in setup.bodies for axis in "xy"]
    names += [f"N:{c['id']}" for c in setup.contacts] + [f"T:{r['id']}" for r in setup.ropes]
    names += [f"f:{c['id']}" for c in setup.contacts if c["static"] is not None]
    names += [f"W:{name}" for name, body in setup.bodies.items() if body.get("varied")]
    return names + [f"P:{p['id']}" for p in setup.pushes if p["size"] is None]


def constant(value):
    return {CONSTANT: value}


def acceleration_of(setup, body):
    """A body's acceleration as a pair of expressions; the frame's for None."""
    if body is None:
        return tuple(constant(part) for part in setup.frame)
    one = setup.num.rational(1)
    return {f"x:{body}": one}, {f"y:{body}": one}


def part_along(setup, pair, direction):
    return plus(setup.num, (direction[0], pair[0]), (direction[1], pair[1]))


def relative(setup, body, reference):
    """Acceleration of a body as seen from another (None: the supports)."""
    one = setup.num.rational(1)
    own, other = acceleration_of(setup, body), acceleration_of(setup, reference)
    return tuple(plus(setup.num, (one, a), (-one, b)) for a, b in zip(own, other))


def has_unknown_push(setup):
    """Whether the document has a push of no given size; one whose size was taken away to find its limits is none."""
    return any(p["size"] is None and not p.get("varied") for p in setup.pushes)


def is_known(setup, name):
    """Whether a body's whole acceleration is given before anything is solved."""
    if name is None:
        return True
    body = setup.bodies[name]
    if body["kind"] == "line":
        return body["known"] is not None and is_known(setup, body["seen_from"])
    if body["kind"] == "rest":
        under = touches(setup, name)
        # A push of no given size keeps a body at rest on what supports it.
        return not under or (has_unknown_push(setup) and all(c["of"] is None for c in under))
    return body["kind"] == "given"


def touches(setup, name):
    return [c for c in setup.contacts if c["on"] == name]


def motion_equations(setup):
    """What is known of the motion of each body."""
    num, found = setup.num, []
    one = num.rational(1)
    for name, body in setup.bodies.items():
        if body["kind"] == "given":
            own = acceleration_of(setup, name)
            found += [plus(num, (one, p), (-one, constant(v))) for p, v in zip(own, body["acceleration"])]
        elif body["kind"] == "line":
            seen = relative(setup, name, body["seen_from"])
            ux, uy = body["along"]
            found.append(part_along(setup, seen, (-uy, ux)))
            if body["known"] is not None:
                found.append(plus(num, (one, part_along(setup, seen, (ux, uy))), (-one, constant(body["known"]))))
        elif body["kind"] == "rest" and is_known(setup, name):
            found += list(relative(setup, name, None))
    return found


def force_sum(setup, name):
    """All forces on a body, along x and y."""
    num = setup.num
    one = num.rational(1)
    body = setup.bodies[name]
    weight = {f"W:{name}": one} if body.get("varied") else constant(body["mass"] * setup.gravity)
    total = [[], [(-one, weight)]]

    def act(factor, direction, expression):
        for axis in (0, 1):
            total[axis].append((factor * direction[axis], expression))

    for rope in setup.ropes:
        for on, direction in rope["pulls"]:
            if on == name:
                act(one, direction, {f"T:{rope['id']}": one})
    for c in setup.contacts:
        for touching, sign in ((c["on"], one), (c["of"], -one)):
            if touching == name:
                act(sign, c["normal"], {f"N:{c['id']}": one})
                if c["static"] is not None:
                    act(sign, c["tangent"], {f"f:{c['id']}": one})
    for push in setup.pushes:
        if push["on"] == name:
            size = {f"P:{push['id']}": one} if push["size"] is None else constant(push["size"])
            act(one, push["direction"], size)
    return [plus(num, *parts) for parts in total]


def newton(setup):
    num = setup.num
    found = []
    for name, body in setup.bodies.items():
        own = acceleration_of(setup, name)
        for force, part in zip(force_sum(setup, name), own):
            found.append(plus(num, (num.rational(1), force), (-body["mass"], part)))
    return found


def rope_part(setup, rope, state):
    """Equations and inequalities of a rope: how fast the way along it grows, and its tension."""
    num = setup.num
    one = num.rational(1)
    tension = {f"T:{rope['id']}": one}
    # Each body that moves the way it is pulled lets the rope go slack.
    slack = plus(num, *[(one, part_along(setup, relative(setup, b, None), d)) for b, d in rope["pulls"]])
    hauled = all(is_known(setup, b) for b, _ in rope["pulls"])
    if state == "taut":
        return ([] if hauled else [slack]), [tension]
    return [tension], ([] if hauled else [slack])


def contact_part(setup, c, state):
    """Equations and inequalities of a contact."""
    num = setup.num
    one = num.rational(1)
    normal = {f"N:{c['id']}": one}
    rough = c["static"] is not None
    friction = {f"f:{c['id']}": one} if rough else None
    seen = relative(setup, c["on"], c["of"])
    apart = part_along(setup, seen, c["normal"])
    sliding = part_along(setup, seen, c["tangent"])
    # A body with its own acceleration given takes the surface that it stands on along: a lift.
    taken = setup.bodies[c["on"]]["kind"] == "given" and c["of"] is None
    if state == "lifted":
        return [normal] + ([friction] if rough else []), ([] if taken else [apart])
    equations, inequalities = ([] if taken else [apart]), [normal]
    if state == "stuck":
        equations += [] if taken else [sliding]
        most = {f"N:{c['id']}": c["static"]}
        inequalities += [plus(num, (one, most), (sign, friction)) for sign in (one, -one)]
    elif state in ("slides forwards", "slides backwards"):
        sense = one if state == "slides forwards" else -one
        equations.append(plus(num, (one, friction), (sense * c["kinetic"], normal)))
        if velocity_sign(setup, c) == 0 and not taken:
            inequalities.append(plus(num, (sense, sliding)))
    return equations, inequalities


def velocity_sign(setup, c):
    """Which way a contact already slides along its tangent: 1, -1, or 0 where nothing says that it does.

    Where both bodies already move, their speeds along their lines are taken to be equal.
    """
    num = setup.num
    total = num.rational(0)
    for name, sign in ((c["on"], 1), (c["of"], -1)):
        body = None if name is None else setup.bodies[name]
        if body is None or body["kind"] != "line":
            continue
        # A motion seen from the other body of the contact is the sliding itself.
        if sign == -1 and setup.bodies[c["on"]].get("seen_from") == name:
            continue
        (ux, uy), (tx, ty) = body["along"], c["tangent"]
        total = total + num.rational(sign * body["going"]) * (ux * tx + uy * ty)
    return num.sign(total)
