"""Tries every state of the ropes and contacts and keeps those in which all equations and inequalities hold."""

from itertools import product

from judge.linear import CONSTANT, bounds, put, solve
from judge.mechanics import (
    acceleration_of,
    contact_part,
    is_known,
    motion_equations,
    newton,
    part_along,
    relative,
    rope_part,
    touches,
    variables_of,
    velocity_sign,
)


def firsts_of(state):
    """Which ropes are taut, which contacts touch, and which of these stick."""
    return {(k, "holds") for k, s in state.items() if s not in ("slack", "lifted")} | {
        (k, "stuck") for k, s in state.items() if s == "stuck"
    }


def states_of_contact(setup, c):
    if c["static"] is None:
        return ["touching", "lifted"]
    moving = velocity_sign(setup, c)
    if moving != 0:
        return ["slides forwards" if moving > 0 else "slides backwards", "lifted"]
    return ["stuck", "slides forwards", "slides backwards", "lifted"]


def all_states(setup):
    ropes = [[(r["id"], s) for s in ("taut", "slack")] for r in setup.ropes]
    contacts = [[(c["id"], s) for s in states_of_contact(setup, c)] for c in setup.contacts]
    return [dict(combination) for combination in product(*ropes, *contacts)]


def in_state(setup, state):
    """The solution and the inequalities of one state; None if its equations contradict each other or an inequality fails."""
    equations, inequalities = newton(setup) + motion_equations(setup), []
    for parts in [rope_part(setup, r, state[r["id"]]) for r in setup.ropes] + [
        contact_part(setup, c, state[c["id"]]) for c in setup.contacts
    ]:
        equations += parts[0]
        inequalities += parts[1]
    solution = solve(setup.num, equations, variables_of(setup))
    if solution is None:
        return None
    left = [put(setup.num, i, solution) for i in inequalities]
    # A quick look at what is settled already.
    if any(set(i) <= {CONSTANT} and setup.num.sign(i.get(CONSTANT, setup.num.rational(0))) < 0 for i in left):
        return None
    left = [i for i in left if not set(i) <= {CONSTANT}]
    if left and bounds(setup.num, left, {}) is None:
        return None
    return solution, left


def answers_in(setup, state, found):
    """Each unknown as its least and largest value."""
    solution, left = found
    return {
        name: bounds(setup.num, left, put(setup.num, expression, solution))
        for name, expression in quantities(setup, state).items()
    }


def quantities(setup, state):
    """What is asked for: forces of unknown size, and the accelerations that are not given.

    A body that has left its surfaces goes no known way: both parts of its acceleration, seen from the ground, are asked for.
    """
    num = setup.num
    one = num.rational(1)
    asked = {r["id"]: {f"T:{r['id']}": one} for r in setup.ropes}
    for c in setup.contacts:
        asked[c["id"]] = {f"N:{c['id']}": one}
        if c["static"] is not None:
            asked[c["friction"]] = {f"f:{c['id']}": one}
    asked.update({p["id"]: {f"P:{p['id']}": one} for p in setup.pushes if p["size"] is None})
    for number, (name, body) in enumerate(setup.bodies.items(), 1):
        if is_known(setup, name):
            continue
        if body["kind"] == "line" and body["known"] is None:
            asked[f"a{number}"] = part_along(setup, relative(setup, name, body["seen_from"]), body["along"])
        elif body["kind"] == "free" or all(state[c["id"]] == "lifted" for c in touches(setup, name)):
            asked[f"a{number}x"], asked[f"a{number}y"] = acceleration_of(setup, name)
        elif body["kind"] == "rest":
            under = touches(setup, name)[0]
            asked[f"a{number}"] = part_along(setup, relative(setup, name, under["of"]), positive(num, under["tangent"]))
    return asked


def positive(num, tangent):
    """Up the surface, or to the right where it is level."""
    x, y = tangent
    sense = num.sign(y) or num.sign(x)
    return (x, y) if sense > 0 else (-x, -y)


def same(num, one, other):
    def equal(a, b):
        return (a is None) == (b is None) and (a is None or num.is_zero(a - b))

    return one.keys() == other.keys() and all(
        equal(one[k][0], other[k][0]) and equal(one[k][1], other[k][1]) for k in one
    )


def judge(setup, rough):
    """The state in force with its answers, and whether another state with other answers holds as well.

    `rough` is the same set-up in decimals: it rules out most states sooner.
    """
    held = []
    for state in all_states(rough):
        if in_state(rough, state) is None:
            continue
        found = in_state(setup, state) if setup is not rough else in_state(rough, state)
        if found is not None:
            held.append((state, answers_in(setup, state, found)))
    if not held:
        return None
    firsts = [firsts_of(state) for state, _ in held]
    best = max(range(len(held)), key=lambda i: len(firsts[i]))
    rivals = [
        held[i][0]
        for i in range(len(held))
        if not firsts[i] <= firsts[best] and not same(setup.num, held[i][1], held[best][1])
    ]
    # The same places in their first state, but the rest otherwise: sliding one way or the other.
    rivals += [
        held[i][0]
        for i in range(len(held))
        if i != best and firsts[i] == firsts[best] and not same(setup.num, held[i][1], held[best][1])
    ]
    return {"state": held[best][0], "answers": held[best][1], "rivals": rivals}



def limits(setup, state):
    """How small and how large each push and each load of given size may be with everything else as it is, where something sticks.

    A load only where nothing speeds up and nothing would: a weight that changes is a mass that changes.
    """
    found = {}
    if "stuck" not in state.values():
        return found
    one = setup.num.rational(1)
    for push in setup.pushes:
        if push["size"] is None:
            continue
        size = push["size"]
        push.update(size=None, varied=True)
        solution, left = in_state(setup, state)
        found[push["id"]] = bounds(setup.num, left, put(setup.num, {f"P:{push['id']}": one}, solution))
        push.update(size=size, varied=False)
    for number, (name, body) in enumerate(setup.bodies.items(), 1):
        if setup.num.is_zero(body["mass"] * setup.gravity):
            continue
        body["varied"] = True
        held = in_state(setup, state)
        body["varied"] = False
        if held is None:
            continue
        solution, left = held
        if all(not e for n, e in solution.items() if n[:2] in ("x:", "y:")):
            found[f"W{number}"] = bounds(setup.num, left, put(setup.num, {f"W:{name}": one}, solution))
    return found
