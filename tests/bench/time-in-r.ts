import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BenchModel } from './bench-models';

export type TimingsInR = {
  readonly version: string;
  readonly lme4: string;
  readonly models: ReadonlyMap<string, { readonly seconds: number; readonly value: number }>;
};

/** Fits the models in R on the same data; undefined when R or lme4 is not installed. */
export function timeInR(models: readonly BenchModel[]): TimingsInR | undefined {
  const probe = spawnSync('Rscript', ['-e', 'library(lme4)'], { encoding: 'utf8' });
  if (probe.error || probe.status !== 0) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    for (const { name, data } of models) {
      const columns = Object.entries(data);
      const rows = columns[0]?.[1].map((_, row) => columns.map(([, values]) => values[row] ?? '').join(','));
      writeFileSync(
        join(folder, `${name}.csv`),
        [columns.map(([key]) => key).join(','), ...(rows ?? [])].join('\n'),
      );
    }
    writeFileSync(
      join(folder, 'models.txt'),
      models.map(({ name, formula }) => `${name}\t${formula}`).join('\n'),
    );
    const script = fileURLToPath(new URL('./mixed-models.R', import.meta.url));
    const run = spawnSync('Rscript', [script, folder], { encoding: 'utf8', maxBuffer: 1e7 });
    if (run.status !== 0) throw new Error(`mixed-models.R failed: ${run.stderr}`);
    const lines = run.stdout
      .trim()
      .split('\n')
      .map((line) => line.split('\t'));
    const [version = '', lme4 = ''] = lines.shift() ?? [];
    return {
      version,
      lme4,
      models: new Map(
        lines.map(([name = '', seconds, value]) => [
          name,
          { seconds: Number(seconds), value: Number(value) },
        ]),
      ),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
