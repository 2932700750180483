import { describe, expect } from "vitest";
import { siteTest } from "../support/site-test.ts";

describe("the built site in a real browser", () => {
  siteTest("shows its name on the front page", async ({ open }) => {
    const page = await open("/");
    expect(await page.title()).toContain("Tautline");
    expect(await page.locator("h1").innerText()).not.toBe("");
  });

  siteTest("is under the strict content-security policy", async ({ open }) => {
    const page = await open("/", { bypassCSP: false });
    const policy = await page.locator('meta[http-equiv="content-security-policy"]').getAttribute("content");
    expect(policy).toContain("default-src 'self'");
    expect(policy).toMatch(/script-src 'self'(?: 'sha256-[^']+')*;/);
    expect(policy).not.toMatch(/(?:script-src|style-src)(?:-elem)? [^;]*unsafe/);
  });
});
