import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { LARGE_MODELS } from './large-models';

/** Every large model in a process of its own, so that its memory can be told. True when every bar is met. */
export function benchLarge(): boolean {
  console.log('100,000 batches, 200 sites, 2,000 lots (30,000 treatment runs), one process each:');
  let within = true;
  for (const { name, seconds, megabytes } of LARGE_MODELS) {
    const script = fileURLToPath(new URL('./fit-large.ts', import.meta.url));
    const run = spawnSync(process.execPath, ['--import', 'tsx', script, name], { encoding: 'utf8' });
    const [taken, busy, peak, evaluations, value] = run.stdout.trim().split('\t').map(Number);
    if (
      run.status !== 0 ||
      taken === undefined ||
      busy === undefined ||
      peak === undefined ||
      value === undefined
    ) {
      console.log(`  ${name}: failed\n${run.stderr}`);
      within = false;
      continue;
    }
    const met = taken <= seconds && peak <= megabytes;
    within &&= met;
    console.log(
      `  ${name.padEnd(58)}${taken.toFixed(1).padStart(6)} s of ${seconds} s (processor ${busy.toFixed(1)} s)   ${peak.toFixed(0).padStart(4)} MB of ` +
        `${megabytes} MB   ${evaluations} evaluations   -2 log L ${value.toFixed(3)}   ${met ? 'met' : 'NOT MET'}`,
    );
  }
  return within;
}
