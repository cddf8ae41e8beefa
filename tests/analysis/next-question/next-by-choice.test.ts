import { describe, expect, it } from 'vitest';
import type { NextChoice, NextPart } from '@/lib/analysis/next-question/next-answer';
import { withEquipment } from '@/lib/analysis/next-question/with-equipment';
import { askStory } from './story-next';

const usable = ['hot_water_bath', 'cold_lime_soak', 'cold_ferment'] as const;
const ask = async (options: Parameters<typeof askStory>[0]) => {
  const { sites } = await askStory({ usable, ...options });
  return (siteId: string): NextPart => {
    const part = sites.find((one) => one.siteId === siteId);
    if (part === undefined) throw new Error(`no site ${siteId}`);
    return part;
  };
};
const asked = (speciesId: string, materialId: string) => ({ mixes: [{ speciesId, materialId, batches: 0 }] });
const only = ({ choices: [first] }: NextPart): NextChoice => {
  if (first === undefined) throw new Error('nothing to choose');
  return first;
};
const usual = await ask({ season: '3' });
const main = only(usual('MILL'));
const bath = (choice: NextChoice) =>
  choice.outlooks.find(({ methodId }) => methodId === 'hot_water_bath') ?? fail('no bath');
const amountOf = (choice: NextChoice, key: 'loss' | 'yield') => {
  const figure = bath(choice)[key];
  return figure.kind === 'figure' ? figure.value : fail(`no ${key}`);
};
function fail(what: string): never {
  throw new Error(what);
}

describe('the answer by choice', { timeout: 90_000 }, () => {
  it('follows the season asked for', async () => {
    const winter = only((await ask({ season: '1' }))('MILL'));
    expect(amountOf(winter, 'loss')).not.toBeCloseTo(amountOf(main, 'loss'), 3);
    expect(winter.standing?.ofSeason).toBe('told');
    const year = only((await ask({ season: null }))('MILL'));
    expect(year.standing?.ofSeason).toBe('year');
  });

  it('falls back to the materials in which the species was grown where too few batches are on the one asked for', async () => {
    const few = only((await ask({ season: '3', ...asked(main.speciesId, 'never_used') }))('MILL'));
    expect(few.standing).toMatchObject({
      material: null,
      ofMaterial: 'few',
      ofSeason: 'told',
      speciesTold: true,
    });
    expect(bath(few).loss.kind).toBe('figure');
    expect(bath(few).yield.kind).toBe('figure');
    expect(few.verdict.kind).toBe('told');
  });

  it('expects nothing of a species that the network has hardly grown, and still says what suits', async () => {
    const strange = only((await ask({ season: '3', ...asked('never_grown', main.materialId) }))('MILL'));
    expect(strange.standing).toMatchObject({ species: null, speciesTold: false });
    expect(strange.verdict).toEqual({ kind: 'cannot', reason: 'too-thin' });
    expect(strange.outlooks.map(({ loss }) => loss.kind)).toEqual(usable.map(() => 'cannot'));
  });

  it('is for the equipment asked for exactly what it would be for a site that has it', async () => {
    const part = usual('MILL');
    const two = ['cold_ferment', 'cold_lime_soak'];
    const narrowed = withEquipment(part, { usable: two, unsaid: false });
    const { sites } = await askStory({ season: '3', usable, without: ['hot_water_bath', 'steam'] });
    const direct = sites.find(({ siteId }) => siteId === 'MILL') ?? fail('no site');
    for (const [at, choice] of narrowed.choices.entries()) {
      const other = direct.choices[at] ?? fail('no choice');
      expect(choice.outlooks).toEqual(other.outlooks);
      expect(choice.verdict).toEqual(other.verdict);
      expect(choice.teaching).toEqual(other.teaching);
    }
    expect(only(narrowed).notHere).toContain('hot_water_bath');
  });

  it('is the same once it has been stored and read back, where Infinity is not written', () => {
    const stored: NextPart = JSON.parse(JSON.stringify(usual('MILL')));
    const all = { usable: [...usable, 'steam', 'untreated'], unsaid: false };
    expect(only(withEquipment(stored, all)).verdict).toEqual(main.verdict);
    expect(only(withEquipment(stored, { usable: [], unsaid: false })).verdict).toEqual({
      kind: 'cannot',
      reason: 'no-method',
    });
  });
});
