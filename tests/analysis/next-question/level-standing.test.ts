import { expect, it } from 'vitest';
import { levelStanding } from '@/lib/analysis/next-question/level-standing';
import { metLevels } from '@/lib/analysis/next-question/met-levels';
import { simulatedNext } from './simulated-next';

const { batches } = simulatedNext({ seed: 3, sites: 4, batchesPerSite: 8, methodsPerSite: 2 });
const husk = (sites: number) =>
  batches.map((batch) => (Number(batch.siteId.slice(-2)) < sites ? { ...batch, materialId: 'husk' } : batch));
const of = (sites: number, siteId: string) =>
  levelStanding(metLevels(husk(sites), { material: true, season: true }), {
    ...{ siteId, speciesId: 'oyster', materialId: 'husk', season: '2' },
  });

it('tells how many batches of others there are from three other sites on, the own site not counted', () => {
  expect(of(3, 'site 03')).toMatchObject({ material: 24, ofMaterial: 'told', species: 32, season: 32 });
  expect(of(3, 'site 00')).toMatchObject({ material: null, ofMaterial: 'told' });
  expect(of(1, 'site 03')).toMatchObject({ material: null, ofMaterial: 'told' });
  expect(of(0, 'site 03')).toMatchObject({ material: null, ofMaterial: 'few' });
});
