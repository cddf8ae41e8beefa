import { existsSync, readFileSync } from 'node:fs';
import { z } from 'zod';

/** How many tests ended how. */
export type Counts = { passed: number; failed: number; skipped: number };

const vitestReport = z.object({
  numPassedTests: z.number(),
  numFailedTests: z.number(),
  numPendingTests: z.number(),
  numTodoTests: z.number(),
  testResults: z.array(z.object({ status: z.string(), assertionResults: z.array(z.unknown()) })),
});

const playwrightReport = z.object({
  stats: z.object({ expected: z.number(), unexpected: z.number(), flaky: z.number(), skipped: z.number() }),
  errors: z.array(z.unknown()),
});

const read = (file: string): unknown =>
  existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;

const nothing: Counts = { passed: 0, failed: 0, skipped: 0 };

/** Counts of a vitest JSON report. A file that could not be loaded has no tests and counts as one failed. */
export function vitestCounts(file: string): Counts {
  const report = vitestReport.safeParse(read(file));
  if (!report.success) return { ...nothing };
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = report.data;
  const unloaded = testResults.filter(
    (result) => result.status === 'failed' && result.assertionResults.length === 0,
  );
  return {
    passed: numPassedTests,
    failed: numFailedTests + unloaded.length,
    skipped: numPendingTests + numTodoTests,
  };
}

/** Counts of a Playwright JSON report. A test that passed only when repeated has failed. */
export function playwrightCounts(file: string): Counts {
  const report = playwrightReport.safeParse(read(file));
  if (!report.success) return { ...nothing };
  const { stats, errors } = report.data;
  return {
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + errors.length,
    skipped: stats.skipped,
  };
}

/** The closing line: "812 passed, 0 failed", and how many were skipped where any were. */
export function countsLine(all: Counts[]): string {
  const sum = (key: keyof Counts) => all.reduce((total, counts) => total + counts[key], 0);
  const skipped = sum('skipped');
  return `${sum('passed')} passed, ${sum('failed')} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
