import { expect, test } from 'vitest';
import { layerLitres } from '@/lib/growing/layer-volume';
import { secondLifeFirstMushrooms } from '@/lib/growing/second-life';

test('the first mushrooms of a second life are expected two to six weeks after the move', () => {
  expect(secondLifeFirstMushrooms('2026-05-18')).toEqual({ from: '2026-06-01', to: '2026-06-29' });
});

test('one millimetre on one square metre is one litre', () => {
  expect(layerLitres(25, 20_000)).toBe(50);
  expect(layerLitres(1, 10_000)).toBe(1);
});
