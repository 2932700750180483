/** Thin and without a line break: U+202F. */
const THIN_SPACE = "\u202F";
const LONGEST_UNGROUPED = 4;

/** Digits with the whole part in groups of three by thin spaces that do not break, where it has more than four digits. */
export function groupDigits(digits: string): string {
  const end = digits.search(/[.,]/u);
  const whole = end < 0 ? digits : digits.slice(0, end);
  if (whole.length <= LONGEST_UNGROUPED || whole.includes(THIN_SPACE)) return digits;
  return whole.replaceAll(/\B(?=(?:\d{3})+$)/gu, THIN_SPACE) + digits.slice(whole.length);
}
