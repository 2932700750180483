// Timing in one process: warm, many rounds, median and 95th percentile.

/** Times in milliseconds. */
export interface Timing {
  readonly median: number;
  readonly p95: number;
}

/** Times a job over a list of inputs, each input once a round, after warm rounds that are not counted. */
export function time<T>(inputs: readonly T[], job: (input: T) => unknown, rounds: number, warm = 5): Timing {
  for (let r = 0; r < warm; r++) inputs.forEach(job);
  const times: number[] = [];
  for (let r = 0; r < rounds; r++) {
    for (const input of inputs) {
      const from = performance.now();
      job(input);
      times.push(performance.now() - from);
    }
  }
  return summary(times);
}

/** Median and 95th percentile of a list of times. */
export function summary(times: readonly number[]): Timing {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? NaN;
  return { median: at(0.5), p95: at(0.95) };
}
