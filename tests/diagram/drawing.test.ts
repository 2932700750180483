import { render } from "@testing-library/svelte";
import { describe, expect, it, vi } from "vitest";
import { boxesOf, situation } from "../../src/diagram/index.ts";
import { Situation } from "../../src/widgets/pictures/index.ts";
import { twoRopes } from "./two-ropes.ts";

// @vitest-environment jsdom

const scene = twoRopes({ ropes: [115, 40], ax: 12 });

function drawn(ondrag?: () => void): SVGSVGElement {
  const { container } = render(Situation, {
    scene,
    title: "The lantern",
    desc: "It hangs on two ropes.",
    ...(ondrag && { ondrag }),
  });
  const svg = container.querySelector("svg");
  if (svg === null) throw new Error("No picture is drawn.");
  return svg;
}

describe("a drawn picture", () => {
  it("has the name and the description it was given", () => {
    const svg = drawn();
    expect(svg.getAttribute("role")).toBe("img");
    const said = (attribute: string): string | undefined =>
      svg.querySelector(`[id="${svg.getAttribute(attribute) ?? ""}"]`)?.textContent;
    expect(said("aria-labelledby")).toBe("The lantern");
    expect(said("aria-describedby")).toBe("It hangs on two ropes.");
  });

  it("carries the key of every computed box, once", () => {
    const keys = Array.from(drawn().querySelectorAll("[data-box]"), (element) => element.getAttribute("data-box"));
    const computed = boxesOf(situation(scene)).map((box) => box.key);
    expect(keys.sort()).toEqual(computed.sort());
  });

  it("names the quantities its parts stand for", () => {
    const svg = drawn();
    const refs = Array.from(
      svg.querySelectorAll("[data-ref]"),
      (element) => element.getAttribute("data-ref")?.split(" ") ?? [],
    );
    const named = new Set(refs.flat());
    for (const ref of ["T1", "T2", "alpha", "beta", "theta", "weight", "a", "ax"])
      expect(named.has(ref), ref).toBe(true);
    expect(named.has("ay")).toBe(false);
  });

  it("hides its handles from readers who do not point, and offers them only where something listens", () => {
    expect(drawn().querySelector(".handles")?.getAttribute("aria-hidden")).toBe("true");
    expect(drawn().querySelector(".handles.live")).toBeNull();
    expect(drawn(vi.fn()).querySelectorAll(".handles.live [data-handle]")).toHaveLength(3);
  });
});
