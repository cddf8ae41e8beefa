import { expect, it } from 'vitest';
import { formatDuration } from '@/lib/ui/format/duration-text';

const plain = (minutes: number) => formatDuration(minutes, 'en-US').replaceAll('\u00a0', ' ');

it.each([
  [-3, '0 min'],
  [0, '0 min'],
  [35.9, '35 min'],
  [60, '1 h'],
  [65, '1 h 5 min'],
  [47 * 60 + 59, '47 h 59 min'],
  [48 * 60, '2 d'],
  [50 * 60 + 30, '2 d 2 h'],
])('writes %d minutes as %s', (minutes, text) => expect(plain(minutes)).toBe(text));
