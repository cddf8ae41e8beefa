import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { buildApp, generateClient } from './build-app';
import { findBrowser } from './find-browser';
import { inProject } from './project';
import { bin, runProgram, runStep } from './run-step';
import { StepFailed } from './shut-down';
import { type Counts, countsLine, playwrightCounts, vitestCounts } from './test-counts';

const reports = {
  unit: inProject('.pinset/test/unit-results.json'),
  browser: inProject('.pinset/test/browser-results.json'),
};

const checkedFolders = ['app', 'lib', 'prisma', 'seed', 'tests'];

/** Runs tests that leave a report, and returns their counts; a run that failed without one counts as one. */
async function tested(
  counts: Counts[],
  read: (file: string) => Counts,
  report: string,
  run: () => Promise<number>,
) {
  rmSync(report, { force: true });
  const code = await run();
  const found = read(report);
  if (code !== 0 && found.failed === 0) found.failed = 1;
  counts.push(found);
  if (code !== 0) throw new StepFailed();
}

const steps: [title: string, run: (counts: Counts[]) => Promise<void>][] = [
  ['Formatting and lint', () => runStep(bin('biome'), ['check', '.'])],
  ['Database client', generateClient],
  [
    'Types',
    async () => {
      await runStep(bin('next'), ['typegen']);
      await runStep(bin('tsc'), ['--noEmit']);
    },
  ],
  [
    'Import rules',
    () => {
      const present = checkedFolders.filter((folder) => existsSync(inProject(folder)));
      return runStep(bin('depcruise'), ['--config', '.dependency-cruiser.cjs', ...present]);
    },
  ],
  [
    'Unit and database tests',
    (counts) =>
      tested(counts, vitestCounts, reports.unit, () =>
        runProgram(bin('vitest'), [
          'run',
          '--reporter=default',
          '--reporter=json',
          `--outputFile.json=${reports.unit}`,
        ]),
      ),
  ],
  ['Statistics against reference values', () => runStep(bin('tsx'), ['tests/reference/check-reference.ts'])],
  ['Build', buildApp],
  [
    'Browser tests',
    async (counts) => {
      process.env.CHROMIUM ??= await findBrowser();
      await tested(counts, playwrightCounts, reports.browser, () => runProgram(bin('playwright'), ['test']));
    },
  ],
];

/** `npm test`: every check in order, up to the first that fails; the last line holds the counts. */
export async function runChecks(): Promise<number> {
  mkdirSync(inProject('.pinset/test'), { recursive: true });
  const counts: Counts[] = [];
  let code = 0;
  for (const [title, run] of steps) {
    const started = Date.now();
    console.log(`\n— ${title}`);
    try {
      await run(counts);
      console.log(`  done in ${((Date.now() - started) / 1000).toFixed(1)} s`);
    } catch (problem) {
      if (!(problem instanceof StepFailed)) console.error(problem);
      if (!counts.some(({ failed }) => failed > 0)) counts.push({ passed: 0, failed: 1, skipped: 0 });
      console.log(`  stopped at: ${title}`);
      code = 1;
      break;
    }
  }
  console.log(`\n${countsLine(counts)}`);
  return code;
}
