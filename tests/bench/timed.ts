import { databaseSessions, type ProcessorTime, processorTime } from './processor-time';

/** What readings took, each: milliseconds by the clock and on processors. */
export type Timed = {
  readonly clock: readonly number[];
  /** Empty where it cannot be told. */
  readonly processor: readonly ProcessorTime[];
};

/** The reader who waits longest of so many, in milliseconds. */
export function quantile(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.ceil(share * values.length) - 1] ?? Number.NaN;
}

/** Runs something so many times, after two that do not count: they also wait for plans and for what is compiled. */
export async function timed(
  times: number,
  run: () => Promise<unknown>,
  before: () => Promise<void> = async () => {},
): Promise<Timed> {
  for (const _ of ['plans', 'code']) {
    await before();
    await run();
  }
  const sessions = await databaseSessions();
  const clock: number[] = [];
  const processor: ProcessorTime[] = [];
  for (let count = 0; count < times; count += 1) {
    await before();
    const start = performance.now();
    const took = await processorTime(sessions, run);
    clock.push(performance.now() - start);
    if (took) processor.push(took);
  }
  return { clock, processor };
}

/** One line of the table, with the verdict where there is a bar. Answers whether it was met by the clock. */
export function printTimed(name: string, { clock, processor }: Timed, bar?: number): boolean {
  const sums = processor.map(({ here, database }) => here + database);
  const p95 = quantile(clock, 0.95);
  const within = bar === undefined || p95 < bar;
  const busy = !within && sums.length > 0 && quantile(sums, 0.95) < bar;
  const verdict =
    bar === undefined
      ? ''
      : `  of ${bar} ${within ? 'within' : busy ? 'ABOVE by the clock, processor within' : 'ABOVE'}`;
  const halves = [processor.map(({ database }) => database), processor.map(({ here }) => here)];
  const figures = [
    ...[quantile(clock, 0.5), p95],
    ...(sums.length === 0
      ? []
      : [quantile(sums, 0.5), quantile(sums, 0.95), ...halves.map((values) => quantile(values, 0.5))]),
  ];
  console.log(`${name.padEnd(44)}${figures.map((value) => value.toFixed(1).padStart(9)).join('')}${verdict}`);
  return within;
}

export const timedHeading = `${''.padEnd(44)}${['p50', 'p95', 'cpu p50', 'cpu p95', 'database', 'here']
  .map((word) => word.padStart(9))
  .join('')}`;
