/**
 * Simulations that show whether intervals hold the truth as often as they say, and tests and alarms keep their level.
 *
 *   npm run calibrate [-- NAME ...] [--quick]
 *
 * Prints markdown tables, all or those of the studies whose name starts with a NAME. Seeds are fixed, so the numbers
 * repeat exactly. --quick runs a tenth of the data sets. The full tables are kept in lib/stats/CALIBRATION.md.
 */
import { parseArgs } from 'node:util';
import { studies } from './studies';

const { values, positionals } = parseArgs({
  options: { quick: { type: 'boolean', default: false } },
  allowPositionals: true,
});
const share = values.quick ? 0.1 : 1;
for (const { name, run } of studies) {
  if (positionals.length > 0 && !positionals.some((start) => name.startsWith(start))) continue;
  console.log(await run((replicates) => Math.max(40, Math.round(replicates * share))));
}
