// An attempt with one rope alone, its direction to be found: the load hangs where it has settled.
import { symbol, ZERO } from "../algebra/expr.ts";
import type { AttemptInput } from "./attempt-input.ts";
import { writeBalance } from "./checks.ts";
import { writeExactAnswer, baseForce } from "./exact-lines.ts";
import { writeFreeLetters } from "./free-letters.ts";
import { LENGTH_MARGIN, writeFreeRope, writeLengthCheck } from "./free-rope.ts";
import type { Live } from "./live.ts";
import { writeAnswer, writeNumber } from "./numbers.ts";
import { settle } from "./settle.ts";
import { writeLawPassages } from "./straight.ts";
import type { Found } from "./straight.ts";
import type { Solved } from "./types.ts";
import { addSolved, givenValues, ZERO_VALUE } from "./values.ts";
import type { Writer } from "./writer.ts";

/** Writes the attempt: each law gives one component at once, then size and direction, then the check that the slack rope is long enough. */
export function writeFree(writer: Writer, input: AttemptInput): Found {
  const values = givenValues(input.world);
  const standings = writeLawPassages(writer, input);
  const solved: Solved[] = [];
  const rope = input.laws[0].components[0]?.force ?? "";
  const lives = standings.map((s): Live => ({
    name: s.law.name,
    axis: s.law.axis,
    left: s.left,
    right: s.right,
    line: s.line,
  }));
  for (const live of lives) {
    const unknown = live.left.find((t) => t.unknown !== null)?.unknown;
    if (unknown == null) continue;
    const found = settle(writer, live, unknown, `settle.${unknown}`);
    solved.push(found);
    writer.passageIfAny(`settle.${unknown}`, {
      kind: "settle",
      unknown,
      axis: live.axis,
      zero: found.expr.kind === "integer",
    });
  }
  addSolved(values, solved);
  for (const r of input.world.ropes) if (r.id !== rope) values.symbols.set(r.id, ZERO_VALUE);
  const done = new Set<string>();
  for (const s of solved) writeNumber(writer, s, done);
  const size = writeFreeRope(writer, input.world, rope, solved, values);
  writer.passage("free-rope", { kind: "free-rope", unknown: rope, kept: rope });
  writeExactAnswer(writer, rope, baseForce(input.world), values);
  writeAnswer(writer, rope, false, size.line);
  for (const r of input.world.ropes) {
    if (r.id !== rope)
      writer.line({
        id: `answer.${r.id}`,
        sides: [symbol(r.id), ZERO],
        kind: "number",
        reason: { kind: "slack-zero" },
      });
  }
  writer.passage("answer", { kind: "answer", unknowns: input.world.ropes.map((r) => r.id) });
  writeBalance(writer, lives, (id) => values.symbols.get(id)?.decimal === 0);
  const slack = input.world.ropes.find((r) => r.id === input.bridge?.rope);
  if (input.bridge !== null && slack !== undefined) {
    writeLengthCheck(writer, slack, input.bridge.dx, input.bridge.dy, values);
    writer.passage("check.length", {
      kind: "check-length",
      rope: slack.id,
      fit: fitOf(Math.hypot(input.bridge.dx, input.bridge.dy), slack.length),
    });
  }
  writer.passage("check.polygon", { kind: "check-polygon" });
  const letters = new Map([[rope, writeFreeLetters(writer, rope, solved, size.line)]]);
  writer.passage("letters", { kind: "letters", unknowns: [rope], equalAngles: false });
  return { solved: [...solved, size], values, letters, combination: null };
}

/** How a rope's length fits the distance it has to bridge. */
function fitOf(distance: number, length: number): "longer" | "just" | "shorter" {
  if (Math.abs(distance - length) <= LENGTH_MARGIN * length) return "just";
  return distance < length ? "longer" : "shorter";
}
