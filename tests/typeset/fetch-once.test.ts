import { describe, expect, it } from "vitest";
import { fetchOnce, onLateFetch } from "../../src/typeset/fetch-once.ts";

describe("what is fetched late", () => {
  it("is fetched once", async () => {
    let count = 0;
    const get = fetchOnce(() => Promise.resolve(++count));
    expect([await get(), await get()]).toEqual([1, 1]);
  });

  it("is fetched again after a failure, and whoever listens hears of both", async () => {
    const heard: boolean[] = [];
    const stop = onLateFetch((failed) => heard.push(failed));
    let isDown = true;
    const get = fetchOnce(() => (isDown ? Promise.reject(new Error("no connection")) : Promise.resolve("there")));
    await expect(get()).rejects.toThrow("no connection");
    isDown = false;
    expect(await get()).toBe("there");
    stop();
    expect(heard).toEqual([true, false]);
  });
});
