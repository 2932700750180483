// A batch takes no more documents than it has room for.
import { setImmediate } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { deriveBatch } from "../../solver/batch/index.ts";
import type { BatchDocument } from "../../solver/batch/index.ts";
import { defaultSettings } from "../../solver/index.ts";
import { LANTERN } from "../problem/lantern.ts";

const WORKERS = 2;
/** Two lists a thread under way and two done but not fetched; one more is being asked for. */
const MOST = WORKERS * 4 + 1;

describe("a batch whose results are fetched slowly", () => {
  it("reads no further ahead than it has room for, and stops reading when its reader does", async () => {
    const seen = { taken: 0, ended: false };
    // Without end.
    async function* lists(): AsyncGenerator<readonly BatchDocument[]> {
      try {
        for (;;) {
          seen.taken++;
          yield await Promise.resolve([{ file: String(seen.taken), line: null, text: LANTERN, unreadable: null }]);
        }
      } finally {
        seen.ended = true;
      }
    }
    const results = deriveBatch(lists(), { settings: defaultSettings, whole: false, workers: WORKERS });
    for (let fetched = 1; fetched <= 30; fetched++) {
      const result = await results.next();
      expect(result.done === true ? "" : result.value.text).toContain(`{"file":"${fetched}",`);
      for (let i = 0; i < 20; i++) await setImmediate();
      expect(seen.taken).toBeLessThanOrEqual(fetched + MOST);
    }
    expect(seen.taken).toBeGreaterThan(30);
    await results.return(undefined);
    expect(seen.ended).toBe(true);
  });
});
