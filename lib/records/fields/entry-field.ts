import { z } from 'zod';
import type { FieldError } from '@/lib/base/result';
import { alwaysTakes, mayTake, type ScriptJson, scriptShapes } from './script-shape';

/** What a number field brought: the text as typed with the unit beside it, or a number from a script. */
export type Typed = { readonly text: string; readonly unit: string | null } | number;

/** The reading of one entry: its value, or what is wrong with it. */
export type Reading<T> =
  | { readonly kind: 'read'; readonly value: T }
  | { readonly kind: 'wrong'; readonly code: string; readonly values?: FieldError['values'] };

export type Reader<T> = (typed: Typed) => Reading<T>;

export function read<T>(value: T): Reading<T> {
  return { kind: 'read', value };
}

export function wrong(code: string, values?: FieldError['values']): Reading<never> {
  return values === undefined ? { kind: 'wrong', code } : { kind: 'wrong', code, values };
}

const longestEntry = 100;

/** Undefined: nothing was given. */
function typedOf(raw: unknown): Typed | Reading<never> | undefined {
  if (raw === undefined || raw === null) return undefined;
  if (typeof raw === 'number') return Number.isFinite(raw) ? raw : wrong('not-a-number');
  const parts = typeof raw === 'string' ? { text: raw } : raw;
  if (typeof parts !== 'object') return wrong('not-a-number');
  const { text, unit } = parts as { text?: unknown; unit?: unknown };
  if (typeof text === 'number') return typedOf(text);
  if (text !== undefined && typeof text !== 'string') return wrong('not-a-number');
  if (text === undefined || text.trim() === '') return undefined;
  if (text.length > longestEntry) return wrong('not-a-number');
  return { text, unit: typeof unit === 'string' && unit !== '' ? unit : null };
}

function readInto<T>(raw: unknown, reader: Reader<T>, context: z.RefinementCtx): T | undefined {
  const typed = typedOf(raw);
  if (typed === undefined) return undefined;
  const reading = typeof typed === 'object' && 'kind' in typed ? typed : reader(typed);
  if (reading.kind === 'read') return reading.value;
  const { code, values } = reading;
  context.addIssue({ code: 'custom', message: code, ...(values ? { params: values } : {}) });
  return z.NEVER;
}

/** A field whose entry must be given. */
export function entryField<T>(reader: Reader<T>, shape: ScriptJson) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): T => {
      const value = readInto(raw, reader, context);
      if (value !== undefined || context.issues.length > 0) return value as T;
      context.addIssue({ code: 'custom', message: 'missing' });
      return z.NEVER;
    })
    .register(scriptShapes, alwaysTakes(shape));
}

/** A field whose entry may be left out; blank is null. */
export function optionalEntryField<T>(reader: Reader<T>, shape: ScriptJson) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): T | null => readInto(raw, reader, context) ?? null)
    .register(scriptShapes, mayTake(shape));
}
