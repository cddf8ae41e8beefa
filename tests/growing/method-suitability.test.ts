import { expect, test } from 'vitest';
import { methodSuitability } from '@/lib/growing/method-suitability';

const reason = (en: string) => ({ en, es: en });
const table = {
  materials: [{ material: 'cardboard', verdict: 'possible', reason: reason('little food') }],
  methods: [
    { method: 'hot_water_bath', verdict: 'suits', reason: reason('usual') },
    { method: 'cold_lime_soak', verdict: 'unsuited', reason: reason('high pH') },
  ],
  pairs: [{ material: 'sawdust', method: 'hot_water_bath', verdict: 'possible', reason: reason('packs') }],
} as const;

test('what suits is said with its reason, and what nobody wrote down is told from it', () => {
  expect(methodSuitability(table, 'straw', 'hot_water_bath')).toEqual({
    verdict: 'suits',
    reasons: [reason('usual')],
  });
  expect(methodSuitability(table, 'straw', 'steam')).toEqual({ verdict: 'not-listed', reasons: [] });
});

test('the worst row gives the verdict and the reasons', () => {
  expect(methodSuitability(table, 'sawdust', 'hot_water_bath')).toEqual({
    verdict: 'possible',
    reasons: [reason('packs')],
  });
  expect(methodSuitability(table, 'cardboard', 'cold_lime_soak')).toEqual({
    verdict: 'unsuited',
    reasons: [reason('high pH')],
  });
  expect(methodSuitability(table, 'cardboard', 'hot_water_bath').reasons).toEqual([reason('little food')]);
});
