import { expect, it } from 'vitest';
import { paragraphsOf } from '@/lib/base/paragraphs-of';

it('Typed words part at an empty line, whether a browser ended its lines by one sign or by two', () => {
  for (const end of ['\n', '\r\n'])
    expect(paragraphsOf(`One.${end}Still one.${end}${end}${end}Two.${end}${end}`)).toEqual([
      `One.${end}Still one.`,
      'Two.',
    ]);
});
