/**
 * Compares the statistics library with reference values.
 *
 *   npm run check:reference -- DIR [NAME ...] [--all-failures]
 *
 * Reads every .json file of DIR (default: the values kept beside this file), or those whose name starts with a
 * NAME, and prints for each how many cases passed, the worst relative error of a compared number and the largest
 * share of a stated tolerance that was used. Ends with 1 when anything failed.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { z } from 'zod';
import { checkFile } from './check-file';
import { loadHandlers } from './load-handlers';
import { readNotOffered } from './not-offered';

const SHOWN_FAILURES = 12;

const referenceFile = z.object({
  method: z.string(),
  description: z.string().default(''),
  conventions: z.array(z.string()).default([]),
  tolerance: z.record(z.string(), z.number()),
  cases: z.array(
    z.object({
      id: z.string(),
      source: z.string().default(''),
      r_call: z.string().default(''),
      input: z.unknown(),
      expected: z.unknown(),
    }),
  ),
});

const { values, positionals } = parseArgs({
  options: { 'all-failures': { type: 'boolean', default: false } },
  allowPositionals: true,
});
const [directory = fileURLToPath(new URL('./data', import.meta.url)), ...names] = positionals;

const list = readNotOffered();
const { byMethod, broken } = await loadHandlers();
for (const problem of broken) console.log(`handler not loaded: ${problem}`);

let passed = 0;
let failed = 0;
let notOffered = 0;
for (const name of readdirSync(directory).sort()) {
  if (!name.endsWith('.json')) continue;
  if (names.length > 0 && !names.some((start) => name.startsWith(start))) continue;
  const parsed = referenceFile.safeParse(JSON.parse(readFileSync(join(directory, name), 'utf8')));
  if (!parsed.success) {
    console.log(`${name}: not in the form of a reference file, left out`);
    continue;
  }
  const report = checkFile(parsed.data, byMethod.get(parsed.data.method), list);
  passed += report.passed;
  failed += report.failed;
  console.log(
    `${name}: ${report.passed} passed, ${report.failed} failed; ${report.numbers} values compared, ` +
      `worst relative error ${report.worstRelativeError.toExponential(1)}, ` +
      `at most ${(100 * report.worstToleranceUsed).toPrecision(2)} % of the tolerance used`,
  );
  const shown = values['all-failures'] ? report.failures : report.failures.slice(0, SHOWN_FAILURES);
  for (const failure of shown) console.log(`  FAILED ${failure}`);
  if (shown.length < report.failures.length)
    console.log(`  ... ${report.failures.length - shown.length} more`);
  for (const [entry, leaves] of report.notOffered) {
    console.log(`  not offered, ${leaves} values of ${entry}`);
    notOffered += leaves;
  }
}
if (notOffered > 0) console.log(`${notOffered} values not offered (tests/reference/not-offered.json)`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && broken.length === 0 ? 0 : 1;
