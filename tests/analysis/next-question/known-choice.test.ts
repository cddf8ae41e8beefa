import { expect, test } from 'vitest';
import { knownChoice } from '@/lib/analysis/next-question/known-choice';
import { parseNextAsked } from '@/lib/analysis/next-question/next-choice.input';

const [oyster, straw, bath, made] = ['1', '2', '3', '4'].map(
  (end) => `0192f0c0-0000-7000-8000-00000000000${end}`,
);
const options = {
  species: [oyster ?? ''],
  materials: [{ id: straw ?? '', here: false }],
  methods: [bath ?? ''],
};

test('what can be chosen is asked for, and an id made up is not', () => {
  const asked = parseNextAsked({ species: oyster, material: straw, season: 'winter' });
  expect(knownChoice(asked, options)).toEqual(asked);
  const other = parseNextAsked({
    ...{ species: made, material: made, season: 'winter', equipment: 'these' },
    methods: [bath ?? '', made ?? ''],
  });
  expect(knownChoice(other, options)).toMatchObject({
    ...{ species: undefined, material: undefined, season: 'winter', methods: [bath] },
  });
});
