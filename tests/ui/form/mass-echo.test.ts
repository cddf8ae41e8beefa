import { expect, test } from 'vitest';
import { massEchoText } from '@/lib/ui/form/mass-echo';
import { formWords } from './form-words';

function echo(text: string, unit: string): string {
  return massEchoText(text, unit, formWords).replaceAll('\u00a0', ' ');
}

test('a mass is repeated in both units, the chosen one first', () => {
  expect(echo('1.36', 'kg')).toBe('1.36 kg, that is 3 lb 0 oz');
  expect(echo('3', 'lb')).toBe('3 lb 0 oz, that is 1.361 kg');
});

test('a unit typed into the box goes before the unit chosen beside it', () => {
  expect(echo('2 lb 3 oz', 'kg')).toBe('992 g, that is 2 lb 3 oz');
});

test("the reader's own decimal sign settles three decimals", () => {
  expect(echo('1.250', 'kg')).toBe('1.25 kg, that is 2 lb 12 oz');
});

test('two readings are both named and none is chosen', () => {
  expect(echo('1,250', 'kg')).toBe('This can be read as 1.25 kg or as 1,250 kg. Write it out in full.');
});

test('nothing is said of an empty box, and of what cannot be read only that', () => {
  expect(echo(' ', 'kg')).toBe('');
  expect(echo('twelve', 'kg')).toBe('This cannot be read as an amount yet');
});
