import { render } from "@testing-library/svelte";
import { describe, expect, it } from "vitest";
import { bodyForceDiagram, bodyPolygon, boxesOf, systemSituation, type Picture } from "../../../src/diagram/index.ts";
import { BodyForces, BodyPolygon, SystemSituation } from "../../../src/widgets/pictures/index.ts";
import { sceneFromDocument } from "./from-document.ts";

// @vitest-environment jsdom

const scene = sceneFromDocument({
  format: 1,
  gravity: 9.8,
  bodies: [
    { id: "sledge", mass: 12 },
    { id: "bucket", mass: 4, motion: { along: { angle: -90 } } },
  ],
  ropes: [
    {
      id: "T",
      pulls: [
        { on: "sledge", direction: { angle: 30 } },
        { on: "bucket", direction: { angle: 90 } },
      ],
    },
  ],
  surfaces: [{ id: "N", on: "sledge", slope: { angle: 30 } }],
  pushes: [{ id: "P", on: "sledge", direction: { angle: 30 }, size: 20 }],
});
const told = { title: "The slipway", desc: "A sledge and a bucket." };

function svgIn(container: Element): SVGSVGElement {
  const svg = container.querySelector("svg");
  if (svg === null) throw new Error("No picture is drawn.");
  return svg;
}

const cases: readonly [name: string, svg: () => SVGSVGElement, picture: Picture][] = [
  ["situation", () => svgIn(render(SystemSituation, { scene, ...told }).container), systemSituation(scene)],
  [
    "force diagram",
    () => svgIn(render(BodyForces, { scene, ...told, body: "sledge", mode: "unknown" }).container),
    bodyForceDiagram(scene, "sledge", "unknown"),
  ],
  [
    "polygon",
    () => svgIn(render(BodyPolygon, { scene, ...told, body: "sledge" }).container),
    bodyPolygon(scene, "sledge"),
  ],
];

describe.each(cases)("the drawn %s", (_, svg, picture) => {
  it("has the name and the description it was given", () => {
    const one = svg();
    const said = (attribute: string): string | undefined =>
      one.querySelector(`[id="${one.getAttribute(attribute) ?? ""}"]`)?.textContent;
    expect([said("aria-labelledby"), said("aria-describedby")]).toEqual([told.title, told.desc]);
  });

  it("is as large as the picture and carries the key of every computed box, once", () => {
    const one = svg();
    expect(one.getAttribute("viewBox")).toBe(`0 0 ${picture.width} ${picture.height}`);
    const keys = Array.from(one.querySelectorAll("[data-box]"), (element) => element.getAttribute("data-box"));
    expect(keys.sort()).toEqual(boxesOf(picture).map(({ key }) => key).sort()); // prettier-ignore
  });
});

describe("the drawn force diagram", () => {
  it("names the forces its parts stand for", () => {
    const svg = svgIn(render(BodyForces, { scene, ...told, body: "sledge", mode: "unknown" }).container);
    const refs = new Set(Array.from(svg.querySelectorAll("[data-ref]"), (element) => element.getAttribute("data-ref")));
    for (const ref of ["weight", "T", "N", "P"]) expect(refs.has(ref), ref).toBe(true);
  });
});
