import { z } from 'zod';
import { isoDateOf } from '@/lib/growing/typed-date';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

const iso = /^(\d{4})-(\d{2})-(\d{2})$/;

type Parts = { quick?: unknown; day?: unknown; month?: unknown; year?: unknown };

function partText(value: unknown): string {
  return typeof value === 'string' ? value.trim() : '';
}

/** What a date field posted as 'YYYY-MM-DD', '' when nothing was given, undefined when it is no real date. */
export function dateTextOf(raw: unknown): string | undefined {
  if (raw === undefined || raw === null || raw === '') return '';
  const text = typeof raw === 'string' ? raw : partText((raw as Parts).quick);
  const match = iso.exec(text);
  if (match) return isoDateOf(match[3] ?? '', match[2] ?? '', match[1] ?? '');
  if (typeof raw !== 'object') return undefined;
  const { day, month, year } = raw as Parts;
  const parts = [partText(day), partText(month), partText(year)];
  if (parts.every((part) => part === '')) return '';
  return isoDateOf(parts[0] ?? '', parts[1] ?? '', parts[2] ?? '');
}

/** A calendar date 'YYYY-MM-DD': from that text, or from the parts a date field posts. */
export const dateField = z
  .unknown()
  .optional()
  .transform((raw, context): string => {
    const text = dateTextOf(raw);
    if (text) return text;
    context.addIssue({ code: 'custom', message: text === '' ? 'missing' : 'not-a-date' });
    return z.NEVER;
  })
  .register(scriptShapes, alwaysTakes({ json: z.iso.date() }));

export const optionalDateField = z
  .unknown()
  .optional()
  .transform((raw, context): string | null => {
    const text = dateTextOf(raw);
    if (text === '') return null;
    if (text) return text;
    context.addIssue({ code: 'custom', message: 'not-a-date' });
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: z.iso.date() }));
