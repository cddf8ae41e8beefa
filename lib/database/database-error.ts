import { Prisma } from './generated/client';

/** What the database refused, in the words of the records. */
export type Refusal =
  | { readonly kind: 'duplicate'; readonly constraint: string }
  | { readonly kind: 'not-yours' }
  | { readonly kind: 'missing-reference' }
  | { readonly kind: 'rule'; readonly code: string; readonly message: string }
  | { readonly kind: 'retry' };

type Cause = { originalCode?: string; originalMessage?: string; constraint?: { index?: string } };

function causeOf(error: unknown): Cause | undefined {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError)) return undefined;
  const adapter = error.meta?.driverAdapterError as { cause?: Cause } | undefined;
  return adapter?.cause;
}

/** Whether the database gave up a statement because it took longer than it may. */
export function tookTooLong(error: unknown): boolean {
  return causeOf(error)?.originalCode === '57014';
}

/** Reads a refusal out of an error of the client; undefined for anything else, which must be thrown on. */
export function refusalOf(error: unknown): Refusal | undefined {
  const cause = causeOf(error);
  if (!cause) return undefined;
  const code = cause.originalCode ?? '';
  if (code === '23505')
    return { kind: 'duplicate', constraint: cause.constraint?.index ?? cause.originalMessage ?? '' };
  if (code === '42501') return { kind: 'not-yours' };
  if (code === '23503') return { kind: 'missing-reference' };
  if (code === '40001' || code === '40P01') return { kind: 'retry' };
  if (code === '23514' || code.startsWith('PB'))
    return { kind: 'rule', code, message: cause.originalMessage ?? '' };
  return undefined;
}
