import type { RecordOrigin } from '@/lib/database/generated/enums';
import type { Actor } from './actor';
import type { ScopedDb } from './scoped-db';

/** What a query gets: a transaction in which the row policies know the actor. */
export type ReadContext = { readonly db: ScopedDb; readonly actor: Actor };

/** What a command gets besides. */
export type WriteContext = ReadContext & {
  /** Codes of questions that the person has answered with yes. */
  readonly confirmed: ReadonlySet<string>;
  readonly now: Date;
  readonly origin: RecordOrigin;
};

/** One of several inputs that are taken at once, with the codes of questions about it that were answered with yes. */
export type OneOfMany<T> = { readonly input: T; readonly confirmed: ReadonlySet<string> };
