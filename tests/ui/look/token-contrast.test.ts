import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { contrast } from './contrast';

const css = readFileSync(path.join(import.meta.dirname, '../../../lib/ui/style/tokens.css'), 'utf8');
const [lightPart = '', darkPart = ''] = css.split('@media');

function colours(part: string): ReadonlyMap<string, string> {
  return new Map(
    [...part.matchAll(/--([\w-]+): (#[0-9a-f]{6})/g)].map(([, name = '', value = '']) => [name, value]),
  );
}

const light = colours(lightPart);
const looks = { light, dark: new Map([...light, ...colours(darkPart)]) };

const texts = ['ink', 'quiet', 'action', 'good', 'watch', 'bad'];
const marks = ['edge', ...[1, 2, 3, 4, 5, 6, 7].map((series) => `series-${series}`)];
const grounds = ['paper', 'sheet'];
const pairs = [
  ...texts.flatMap((text) => grounds.map((ground) => ({ front: text, ground, least: 4.5 }))),
  ...marks.flatMap((mark) => grounds.map((ground) => ({ front: mark, ground, least: 3 }))),
  { front: 'on-action', ground: 'action', least: 4.5 },
  { front: 'on-bad', ground: 'bad', least: 4.5 },
];

describe.each(['light', 'dark'] as const)('in the %s look', (look) => {
  test.each(pairs)('$front on $ground keeps $least to 1', ({ front, ground, least }) => {
    const colour = (name: string) => looks[look].get(name) ?? '';
    expect(contrast(colour(front), colour(ground))).toBeGreaterThanOrEqual(least);
  });
});

test('the focus ring shows against the page in both looks', () => {
  expect(contrast(light.get('focus-ink') ?? '', light.get('paper') ?? '')).toBeGreaterThan(3);
  expect(contrast(light.get('focus') ?? '', looks.dark.get('paper') ?? '')).toBeGreaterThan(3);
});

test('black on white is 21 to 1 and #777777 on white is 4.48 to 1, as in the definition', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});
