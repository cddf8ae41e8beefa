import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inFitTurn } from '@/lib/analysis/fitted/fit-turn';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';

const { superuser } = await testDatabase();
const { coordinator } = await growers(superuser);
const admin = new Client({ connectionString: superuser });
beforeAll(() => admin.connect());
afterAll(() => admin.end());

const times = { signMilliseconds: 100, goneMilliseconds: 1_500, lookMilliseconds: 20 };
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Another process that holds the turn for so many milliseconds, and the instants it tells. */
function otherProcess(holds: number) {
  const file = fileURLToPath(new URL('./hold-turn.ts', import.meta.url));
  const given = [JSON.stringify(coordinator), JSON.stringify(times), String(holds)];
  const process_ = spawn(process.execPath, ['--conditions=react-server', '--import', 'tsx', file, ...given], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: process.env,
  });
  const told: string[] = [];
  process_.stdout.setEncoding('utf8');
  process_.stdout.on('data', (text: string) => told.push(...text.trim().split('\n')));
  const instant = (what: string) => Number(told.find((line) => line.startsWith(what))?.split(' ')[1]);
  return { process: process_, instant };
}

describe('the turn to fit for a network', () => {
  it('is held by one process at a time: fits of two processes do not overlap', async () => {
    const other = otherProcess(2_000);
    await expect.poll(() => other.instant('starts'), { timeout: 60_000, interval: 50 }).toBeGreaterThan(0);
    const own = await inFitTurn(coordinator, async () => Date.now(), times);
    await once(other.process, 'exit');
    expect(own).toBeGreaterThanOrEqual(other.instant('ends'));
    // It was held past the time after which a silent holder counts as gone, by signs alone.
    expect(other.instant('ends') - other.instant('starts')).toBeGreaterThan(times.goneMilliseconds);
  }, 120_000);

  it('passes on when the process that holds it is killed', async () => {
    const other = otherProcess(600_000);
    await expect.poll(() => other.instant('starts'), { timeout: 60_000, interval: 50 }).toBeGreaterThan(0);
    other.process.kill('SIGKILL');
    await once(other.process, 'exit');
    expect(await inFitTurn(coordinator, async () => 'mine', times)).toBe('mine');
  }, 120_000);

  it('is given back by a job that fails', async () => {
    await expect(
      inFitTurn(coordinator, () => Promise.reject(new Error('no fit')), {
        ...times,
        goneMilliseconds: 600_000,
      }),
    ).rejects.toThrow('no fit');
    const start = Date.now();
    await inFitTurn(coordinator, () => pause(0), { ...times, goneMilliseconds: 600_000 });
    expect(Date.now() - start).toBeLessThan(60_000);
  });

  it('is taken once however many ask at the same instant', async () => {
    let under = 0;
    let most = 0;
    const job = async () => {
      under += 1;
      most = Math.max(most, under);
      await pause(30);
      under -= 1;
    };
    await Promise.all(Array.from({ length: 6 }, () => inFitTurn(coordinator, job, times)));
    expect(most).toBe(1);
    const { rows } = await admin.query('select count(*)::int as turns from fit_turn');
    expect(rows[0]).toEqual({ turns: 1 });
  });
});
