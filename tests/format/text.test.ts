import { describe, expect, test } from "vitest";
import { groupDigits, plainText, toDecimals, toFigures, withUnit } from "../../shared/format/index.ts";

describe("a printed number as plain text", () => {
  test.each([
    [32.643, "N", "32.6\u00A0N"],
    [-32.643, "N", "\u221232.6\u00A0N"],
    [65, "°", "65.0°"],
    [4.5e-7, "m/s²", "4.50×10⁻⁷\u00A0m/s²"],
    [-1.5e12, "N", "\u22121.50×10¹²\u00A0N"],
    [0, "N", "0\u00A0N"],
    [0.55169, "", "0.552"],
    [71.9, "%", "71.9\u00A0%"],
  ])("%d with the unit %j is %j", (value, unit, text) => {
    expect(withUnit(toFigures(value, 3), unit)).toBe(text);
  });

  test("groups whole parts of more than four digits by thin spaces that do not break, only when asked", () => {
    expect(withUnit(toDecimals(12345.678, 3), "N")).toBe("12345.678\u00A0N");
    expect(withUnit(toDecimals(12345.678, 3), "N", { group: true })).toBe("12\u202F345.678\u00A0N");
    expect(plainText(toDecimals(-1234567, 0), { group: true })).toBe("\u22121\u202F234\u202F567");
    expect(groupDigits("1234.56789")).toBe("1234.56789");
    expect(groupDigits("123456,5")).toBe("123\u202F456,5");
    expect(groupDigits(groupDigits("1234567"))).toBe("1\u202F234\u202F567");
  });
});
