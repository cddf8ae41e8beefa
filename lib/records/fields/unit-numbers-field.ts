import { z } from 'zod';
import { mayTake, scriptShapes } from './script-shape';

const part = /^(\d{1,6})(?:\s*[-–]\s*(\d{1,6}))?$/;
const most = 1000;

/** The numbers in "3, 7-9 12" in ascending order; undefined when it cannot be read or names more than 1,000. */
export function unitNumbersOf(text: string): number[] | undefined {
  const numbers: number[] = [];
  const parts = text
    .replace(/\s*([-–])\s*/g, '$1')
    .split(/[\s,;.]+/)
    .filter((one) => one !== '');
  for (const one of parts) {
    const match = part.exec(one);
    if (!match) return undefined;
    const from = Number(match[1]);
    const to = match[2] === undefined ? from : Number(match[2]);
    if (from < 1 || to < from || to - from >= most) return undefined;
    for (let number = from; number <= to; number += 1) numbers.push(number);
    if (numbers.length > most) return undefined;
  }
  return numbers.sort((first, second) => first - second);
}

/** Numbers of units within a batch, typed as "3, 7-9" or given as a list; blank is none. */
export const unitNumbersField = z
  .unknown()
  .optional()
  .transform((raw, context): number[] => {
    const text = Array.isArray(raw) ? raw.join(',') : (raw ?? '');
    const numbers = typeof text === 'string' && text.length <= 5000 ? unitNumbersOf(text) : undefined;
    if (numbers === undefined) context.addIssue({ code: 'custom', message: 'unit-numbers-unreadable' });
    else if (new Set(numbers).size !== numbers.length)
      context.addIssue({ code: 'custom', message: 'duplicate-units' });
    else return numbers;
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: z.array(z.int().min(1)).max(most) }));
