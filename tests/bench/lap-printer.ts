/** Seconds by the clock and of processor time, of all threads of this process. */
type Lapped<T> = { readonly value: T; readonly clock: number; readonly processor: number };
export type Lap = <T>(name: string, run: () => Promise<T>) => Promise<Lapped<T>>;

/** Runs stages one after another and prints what each took, and what memory the process has by then. */
export function lapPrinter(): Lap {
  return async (name, run) => {
    const start = performance.now();
    const before = process.cpuUsage();
    const value = await run();
    const { user, system } = process.cpuUsage(before);
    const clock = (performance.now() - start) / 1000;
    const processor = (user + system) / 1e6;
    const memory = `${Math.round(process.memoryUsage().rss / 1e6)} MB`;
    console.log(
      `${name.padEnd(46)}${clock.toFixed(1).padStart(7)} s, processor ${processor.toFixed(1).padStart(6)} s ${memory.padStart(9)}`,
    );
    return { value, clock, processor };
  };
}
