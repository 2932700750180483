"""An oracle of our own formulation, with SymPy's exact fields: problem documents in, answers out, a line of JSON each.

    /usr/bin/python3 tests/crosscheck/oracle.py < documents.jsonl > answers.jsonl

It shares nothing with the solver but the public format. Every body has two unknown parts of acceleration, every rope a
tension, every contact a normal force and a friction; every state of ropes and contacts is tried.
"""

import json
import sys

import mpmath
import sympy

from judge.document import SetUp, parse
from judge.hanging import by_lengths, is_plain_hanging, swung
from judge.numbers import Rounded
from judge.states import judge, limits

NAME = f"SymPy {sympy.__version__} (python3-sympy of Debian), mpmath {mpmath.__version__}"


def written(num, value):
    """A number as decimals of 17 figures and, where there is one, exact text."""
    exact = num.text(value)
    return {"decimal": num.decimal(value), **({} if exact is None else {"exact": exact})}


def written_range(num, pair):
    low, high = pair
    if low is not None and high is not None and num.is_zero(high - low):
        return written(num, low)
    return {
        "least": None if low is None else num.decimal(low),
        "most": None if high is None else num.decimal(high),
    }


def placed(found):
    """The outcome of a body whose place was to be found."""
    if found is None:
        return {"case": "impossible", "states": {}, "answers": {}}
    num, states, answers = found
    return {"case": "determined", "states": states, "answers": {k: written(num, v) for k, v in answers.items()}}


def answer(text):
    setup = SetUp(parse(text))
    if setup.hangs:
        return placed(by_lengths(setup))
    rough = setup if not setup.num.exact else SetUp(parse(text), Rounded())
    found = judge(setup, rough)
    if found is None:
        swings = swung(setup) if is_plain_hanging(setup.document) else None
        return placed(swings) | ({} if swings is None else {"swings": True})
    answers = {k: written_range(setup.num, v) for k, v in found["answers"].items()}
    ends = {k: written_range(setup.num, v) for k, v in limits(setup, found["state"]).items()}
    return {
        "case": "determined" if all("decimal" in a for a in answers.values()) else "under-determined",
        "states": found["state"],
        "answers": answers,
        **({"limits": ends} if ends else {}),
        **({"rivals": found["rivals"]} if found["rivals"] else {}),
    }


if __name__ == "__main__":
    if "--name" in sys.argv:
        print(NAME)
        sys.exit(0)
    for line in sys.stdin:
        if line.strip():
            print(json.dumps(answer(line)), flush=True)
