import { expect, test } from 'vitest';
import { formatWorkMinutes } from '@/lib/ui/format/work-text';

test.each([
  [0, '0'],
  [0.0049, '<0.01'],
  [0.005, '0.01'],
  [0.4537, '0.45'],
  [0.994, '0.99'],
  [0.996, '1.0'],
  [6.80388555, '6.8'],
  [9.94, '9.9'],
  [9.96, '10'],
  [15.4, '15'],
  [1234.5, '1,235'],
])('%d minutes of work are written %s', (minutes, text) => {
  expect(formatWorkMinutes(minutes, 'en-US')).toBe(text);
});

test('work is written with the reader’s decimal sign', () => {
  expect(formatWorkMinutes(0.4537, 'es-ES')).toBe('0,45');
  expect(formatWorkMinutes(0.001, 'es-ES')).toBe('<0,01');
});
