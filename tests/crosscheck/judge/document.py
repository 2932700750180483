"""Reads a problem document into bodies, ropes, contacts and pushes with directions as pairs of numbers."""

import json
from fractions import Fraction

from judge.numbers import MOST_ROOTS, Exact, Rounded, independent, roots_of_angle, square_free


def parse(text):
    """The document with every number as an exact fraction."""
    return json.loads(text, parse_float=Fraction, parse_int=Fraction)


def fraction(value):
    return Fraction(value)


def degrees_of(direction):
    """Degrees anticlockwise from the x axis."""
    angle = fraction(direction["angle"])
    if direction.get("from") != "vertical":
        return angle
    return 90 + angle if direction["side"] == "left" else 90 - angle


def pulls_of(rope, places):
    """The pulls of a rope as (body, direction document), in order."""
    if "pulls" in rope:
        return [(p["on"], p["direction"]) for p in rope["pulls"]]
    if "direction" in rope:
        first = rope["direction"]
    elif "length" in rope:
        first = None
    else:
        start = places[rope["on"]]
        end = rope.get("anchor") or places[rope["to"]]
        first = {"run": fraction(end["x"]) - fraction(start["x"]), "rise": fraction(end["y"]) - fraction(start["y"])}
    pulls = [(rope["on"], first)]
    if "to" in rope:
        pulls.append((rope["to"], opposite(first)))
    return pulls


def opposite(direction):
    if "run" in direction:
        return {"run": -fraction(direction["run"]), "rise": -fraction(direction["rise"])}
    return {"angle": degrees_of(direction) + 180}


def all_directions(document, places):
    for rope in document.get("ropes", []):
        yield from (d for _, d in pulls_of(rope, places) if d is not None)
    for surface in document.get("surfaces", []):
        yield surface.get("slope") or surface["normal"]
    for push in document.get("pushes", []):
        yield push["direction"]
    for body in document["bodies"]:
        if isinstance(body.get("motion"), dict):
            yield body["motion"]["along"]


def numbers_for(document, places):
    """The kind of numbers that the directions of a document allow."""
    radicands = set()
    for direction in all_directions(document, places):
        if "run" in direction:
            square = fraction(direction["run"]) ** 2 + fraction(direction["rise"]) ** 2
            part, _ = square_free(square.numerator * square.denominator)
            radicands |= {part} - {1}
            continue
        degrees = degrees_of(direction)
        if degrees % 15 != 0:
            return Rounded()
        radicands |= set(roots_of_angle(degrees))
    return Exact(radicands) if len(independent(radicands)) <= MOST_ROOTS else Rounded()


class SetUp:
    """A document with its numbers turned into one kind."""

    def __init__(self, document, numbers=None):
        self.document = document
        places = {b["id"]: b["at"] for b in document["bodies"] if "at" in b}
        self.num = num = numbers or numbers_for(document, places)
        self.gravity = num.rational(document["gravity"])
        frame = document.get("frame", {})
        self.frame = (num.rational(frame.get("x", 0)), num.rational(frame.get("y", 0)))
        self.bodies = {b["id"]: self.body(b) for b in document["bodies"]}
        self.hangs = any("length" in r for r in document.get("ropes", []))
        self.ropes = [] if self.hangs else [self.rope(r, places) for r in document.get("ropes", [])]
        self.contacts = [self.contact(s) for s in document.get("surfaces", [])]
        self.pushes = [self.push(p) for p in document.get("pushes", [])]

    def vector(self, direction):
        """The unit vector of a direction document."""
        if "run" in direction:
            run, rise = fraction(direction["run"]), fraction(direction["rise"])
            length = self.num.root(run**2 + rise**2)
            return self.num.rational(run) / length, self.num.rational(rise) / length
        return self.num.turn(degrees_of(direction))

    def body(self, body):
        num = self.num
        if "weight" in body:
            mass = num.rational(body["weight"]) / self.gravity
        else:
            mass = num.rational(body.get("mass", 0))
        own = body.get("acceleration")
        motion = body.get("motion")
        made = {"id": body["id"], "mass": mass, "kind": "rest"}
        if own is not None:
            made.update(kind="given", acceleration=(num.rational(own.get("x", 0)), num.rational(own.get("y", 0))))
        elif motion == "free":
            made["kind"] = "free"
        elif motion is not None:
            known = motion.get("acceleration")
            made.update(
                kind="line",
                along=self.vector(motion["along"]),
                known=None if known is None else num.rational(known),
                going={"forwards": 1, "backwards": -1}.get(motion.get("going"), 0),
                seen_from=motion.get("seenFrom"),
            )
        return made

    def rope(self, rope, places):
        pulls = [(body, self.vector(direction)) for body, direction in pulls_of(rope, places)]
        return {"id": rope["id"], "pulls": pulls}

    def contact(self, surface):
        along = surface.get("slope")
        if along is not None:
            tx, ty = self.vector(along)
            upper = self.num.sign(tx)
            normal = (-ty, tx) if upper > 0 else (ty, -tx)
            tangent = (tx, ty)
        else:
            nx, ny = normal = self.vector(surface["normal"])
            tangent = (ny, -nx)
        friction = surface.get("friction", {})
        most = friction.get("static", friction.get("kinetic"))
        sliding = friction.get("kinetic", friction.get("static"))
        rough = most is not None and (fraction(most) != 0 or fraction(sliding) != 0)
        name = surface["id"]
        return {
            "id": name,
            "friction": f"f{name[1:]}" if name[0] == "N" and (name[1:].isdigit() or name == "N") else f"{name}f",
            "on": surface["on"],
            "of": surface.get("of"),
            "normal": normal,
            "tangent": tangent,
            "static": self.num.rational(most) if rough else None,
            "kinetic": self.num.rational(sliding) if rough else None,
        }

    def push(self, push):
        size = push.get("size")
        return {
            "id": push["id"],
            "on": push["on"],
            "direction": self.vector(push["direction"]),
            "size": None if size is None else self.num.rational(size),
        }
