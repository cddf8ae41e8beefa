import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { faultless } from './check-records';
import { nemesisPlace } from './nemesis-place';

const minutes = 60_000;

async function verdicts(bug: string, seeds: readonly number[], size: { entries: number; kills: number }) {
  const place = await nemesisPlace(mkdtempSync(path.join(tmpdir(), 'nemesis-')), bug);
  try {
    const found = [];
    for (const seed of seeds)
      found.push((await place.run(seededRandom(seed), { ...size, devices: 8 })).verdict);
    return found;
  } finally {
    await place.end();
  }
}

describe('eight phones in a storm, with app and database killed under them', () => {
  it('lose nothing that was acknowledged, double nothing and invent nothing', {
    timeout: 4 * minutes,
  }, async () => {
    for (const verdict of await verdicts('', [1, 2], { entries: 120, kills: 2 })) {
      expect(verdict).toMatchObject({ entries: 120, acknowledged: 120 });
      expect(verdict).toMatchObject({ lost: 0, doubled: 0, invented: 0, stuck: 0, wronglyStanding: 0 });
    }
  });
});

describe('the storm finds a fault planted on purpose:', () => {
  it('records under new ids with no receipt', { timeout: 2 * minutes }, async () => {
    const [verdict] = await verdicts('naive', [1], { entries: 320, kills: 1 });
    expect(verdict?.doubled).toBeGreaterThan(0);
    expect(verdict && faultless(verdict)).toBe(false);
  });

  it('an answer before the commit', { timeout: 2 * minutes }, async () => {
    const [verdict] = await verdicts('ack-early', [1], { entries: 320, kills: 1 });
    expect(verdict?.lost).toBeGreaterThan(0);
  });

  it('a phone that throws away what was refused', { timeout: 2 * minutes }, async () => {
    const [verdict] = await verdicts('delete-refused', [1], { entries: 60, kills: 1 });
    expect(verdict?.stuck).toBeGreaterThan(0);
  });
});
