// The form over every example: rows say what the document says, edits make documents that the format accepts.
import { globSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readProblem } from "../../shared/problem/schema.ts";
import * as form from "../../src/problem/index.ts";
import type { JsonObject, Tie } from "../../src/problem/index.ts";

const examples = globSync("shared/problem/examples/*.json")
  .filter((file) => !file.endsWith("index.json"))
  .map((file): [string, JsonObject] => [file.replace(/^.*\//, ""), form.readObject(readFileSync(file, "utf8")) ?? {}]);

const faultsOf = (document: JsonObject): readonly string[] => {
  const reading = readProblem(form.writeDocument(document));
  return reading.ok ? [] : reading.faults.map((f) => `${f.path}: found ${f.found}; accepted: ${f.accepted}`);
};
/** All edits of a kind after one another. */
const through = (document: JsonObject, ...changes: ((d: JsonObject) => JsonObject)[]): JsonObject =>
  changes.reduce((d, change) => change(d), document);

describe("another way of tying a rope", () => {
  const two = through(
    form.emptyDocument("SI"),
    (d) => form.addBody(d, "load"),
    (d) => form.addBody(d, "pulley"),
    form.addRope,
  );
  const TIES: Tie[] = ["support", "body", "fixed-pulley", "movable-pulley", "anchor", "anchor-length", "body-places"];

  it.each(TIES.flatMap((from) => TIES.map((to): [Tie, Tie] => [from, to])))("from %s to %s", (from, to) => {
    const before = form.setTie(two, 0, from);
    const after = form.setTie(before, 0, to);
    expect(form.ropeRows(after)[0]?.tie).toBe(to);
    expect(form.ropeRows(after)[0]?.id).toBe(form.ropeRows(two)[0]?.id);
    // Only one body at rest may hang by lengths, and this is another affair than how the rope is written.
    if (to !== "anchor-length") expect(faultsOf(after)).toEqual([]);
  });
});

describe("a book's problem", () => {
  it("a sign on a level stay and a sloping rope is four edits from nothing", () => {
    const sign = through(
      form.emptyDocument("SI"),
      (d) => form.addBody(d, "load"),
      (d) => form.renameBody(d, 0, "shop sign"),
      (d) => form.setLoad(d, 0, "mass", 12),
      form.addRope,
      (d) => form.setRope(d, 0, "direction", { angle: 180 }),
      form.addRope,
      (d) =>
        form.setRope(
          d,
          1,
          "direction",
          form.directionOf({ ...form.wordsOf({ angle: 40 }, null), angle: "35" }, null) ?? {},
        ),
    );
    expect(sign).toEqual({
      format: 1,
      gravity: 9.8,
      bodies: [{ id: "shopsign", name: "shop sign", mass: 12 }],
      ropes: [
        { id: "T1", on: "shopsign", direction: { angle: 180 } },
        { id: "T2", on: "shopsign", direction: { angle: 35 } },
      ],
    });
    expect(faultsOf(sign)).toEqual([]);
  });

  it("a crate on a rough slope and a bucket over a pulley", () => {
    const pair = through(
      form.emptyDocument("SI"),
      (d) => form.addBody(d, "load"),
      (d) => form.renameBody(d, 0, "tea crate"),
      (d) => form.addBody(d, "load"),
      (d) => form.renameBody(d, 1, "bucket"),
      form.addSurface,
      (d) => form.setLie(d, 0, "rises-right"),
      (d) => form.setRough(d, 0, true),
      form.addRope,
      (d) => form.setRope(d, 0, "on", "crate"),
      (d) => form.setRope(d, 0, "direction", form.slopeUnder(d, "crate") ?? {}),
      (d) => form.setTie(d, 0, "fixed-pulley"),
    );
    expect(pair.ropes).toEqual([
      {
        id: "T1",
        pulls: [
          { on: "crate", direction: { angle: 30 } },
          { on: "bucket", direction: { angle: 90 } },
        ],
      },
    ]);
    expect(faultsOf(pair)).toEqual([]);
    const steeper = form.setSlope(pair, 0, { ...form.wordsOf({ angle: 30 }, null), angle: "40" });
    expect(form.ropeRows(steeper)[0]?.pulls[0]?.direction).toEqual({ angle: 40 });
    expect(form.ropeRows(steeper)[0]?.pulls[1]?.direction).toEqual({ angle: 90 });
    expect(faultsOf(steeper)).toEqual([]);
  });

  it("two loads over a fixed pulley may move, without anybody having to say so", () => {
    const hoist = through(
      form.emptyDocument("SI"),
      (d) => form.addBody(d, "load"),
      (d) => form.addBody(d, "load"),
      form.addRope,
      (d) => form.setTie(d, 0, "fixed-pulley"),
    );
    expect(form.bodyRows(hoist).map((row) => row.motion.choice)).toEqual(["line", "line"]);
    // Laid on a table, one of them is guided by the table.
    const table = form.addSurface(hoist);
    expect(form.bodyRows(table).map((row) => row.motion.choice)).toEqual(["rest", "line"]);
    const other = form.setTouched(table, 0, "load2");
    expect(form.bodyRows(other).map((row) => row.motion.choice)).toEqual(["rest", "rest"]);
    for (const document of [hoist, table, other]) expect(faultsOf(document)).toEqual([]);
  });

  it("in pound-force and foot keeps its numbers, and g is the other system's", () => {
    const feet = form.setUnits(form.addBody(form.emptyDocument("SI"), "load"), "lbf-ft");
    expect(feet).toMatchObject({ units: "lbf-ft", gravity: 32.2, bodies: [{ mass: 1 }] });
    expect(form.setUnits(feet, "SI")).toEqual(form.addBody(form.emptyDocument("SI"), "load"));
    expect(form.setUnits({ ...feet, gravity: 31 }, "SI").gravity).toBe(31);
  });
});

describe("a body", () => {
  it.each(examples)("of %s goes with everything that touches it", (_, document) => {
    for (const row of form.bodyRows(document)) {
      const without = form.withoutBody(document, row.index);
      expect(form.idsOf(without)).not.toContain(row.id);
      const rest = faultsOf(without).filter((fault) => !fault.startsWith("/bodies:"));
      // What is left may lack something, as a movable pulley without its rope; it must not name what is gone.
      expect(rest.filter((fault) => fault.includes(row.id))).toEqual([]);
    }
  });

  it.each(examples)("of %s can be renamed, and everything that names it follows", (_, document) => {
    for (const row of form.bodyRows(document)) {
      const nameless = {
        ...document,
        bodies: form.listAt(document, "bodies").map((b) => form.withKey(b, "name", undefined)),
      };
      const renamed = form.withBodyId(nameless, row.id, "another");
      expect(JSON.stringify(renamed).replaceAll('"kind":"', "")).not.toContain(`"${row.id}"`);
      expect(faultsOf(renamed)).toEqual([]);
    }
  });

  it("has an id of its name while nobody has given it another", () => {
    const one = form.addBody(form.emptyDocument("SI"), "load");
    const named = form.renameBody(one, 0, "brass lantern");
    expect(form.bodyRows(named)[0]?.id).toBe("lantern");
    const own = form.withBodyId(named, "lantern", "A");
    expect(form.bodyRows(form.renameBody(own, 0, "tea crate"))[0]?.id).toBe("A");
  });

  it("two of a name have two ids", () => {
    const two = through(
      form.emptyDocument("SI"),
      (d) => form.addBody(d, "load"),
      (d) => form.addBody(d, "load"),
    );
    expect(form.idsOf(two)).toEqual(["load", "load2"]);
    expect(form.idsOf(form.renameBody(form.renameBody(two, 0, "crate"), 1, "crate"))).toEqual(["crate", "crate2"]);
  });

  it.each([
    ["", "body"],
    ["茶", "body"],
    ["Crème", "creme"],
    ["sin", "sin2"],
    ["shop sign", "shopsign"],
    ["load 3", "load3"],
    ["a very-long-unpronounceable", "verylongunpron"],
  ])("named “%s” has the id %s", (name, id) => {
    expect(form.bodyIdFor(name, [])).toMatch(id === "verylongunpron" ? /^[a-z]{1,14}$/ : new RegExp(`^${id}$`));
  });
});

describe("the place of a fault", () => {
  const [, document] = examples.find(([file]) => file === "crate-at-rest-on-rough-slope.json") ?? ["", {}];
  it.each([
    ["", "the document"],
    ["/gravity", "gravity"],
    ["/bodies/0/mass", "body tea crate, mass"],
    ["/surfaces/0/friction/static", "surface N, friction, static coefficient"],
    ["/ropes/7/direction/angle", "rope 8, direction, angle"],
    ["/__proto__", "__proto__"],
  ])("%s is %s", (path, words) => {
    const place = form.placeInWords(path, document);
    expect(place).toBe(words.replace("tea crate", form.nameOf(form.listAt(document, "bodies")[0] ?? {})));
  });

  it("is looked for from the field outwards", () => {
    expect(form.fieldsFor("/ropes/0/direction/angle")).toEqual([
      "at-ropes-0-direction-angle",
      "at-ropes-0-direction",
      "at-ropes-0",
      "at-ropes",
    ]);
  });
});
