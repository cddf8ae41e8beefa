import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';

/** Which rows, as every table's own `where` understands it. */
export type RowFilter = {
  readonly id?: string | { readonly lt: string } | { readonly gt: string };
  readonly voidedAt?: null;
};
export type RowPage = { readonly orderBy: { readonly id: 'asc' | 'desc' }; readonly take: number };

export type Filters = Readonly<Record<string, string | undefined>>;

/** A kind of record that scripts read: how a row is found and told. */
export type Resource = {
  /** As addresses name it. */
  readonly name: string;
  /** One of it in words, such as "a look". */
  readonly one: string;
  readonly about: string;
  readonly schema: z.ZodObject;
  /** Names of the filters of its list besides those that every list has. */
  readonly filters: Readonly<Record<string, z.ZodType>>;
  /** Rows with their revision (undefined for a kind that has none). */
  read(context: ReadContext, where: RowFilter, page: RowPage, filters: Filters): Promise<readonly ToldRow[]>;
};

export type ToldRow = {
  readonly id: string;
  readonly revision: number;
  readonly body: Readonly<Record<string, unknown>>;
};

type Row = { readonly id: string; readonly revision: number };

/** Joins the question for rows of a kind to how one of them is told. */
export function resource<R extends Row, S extends z.ZodObject>(of: {
  readonly name: string;
  readonly one: string;
  readonly about: string;
  readonly schema: S;
  readonly filters?: Readonly<Record<string, z.ZodType>>;
  readonly rows: (
    context: ReadContext,
    where: RowFilter,
    page: RowPage,
    filters: Filters,
  ) => Promise<readonly R[]>;
  readonly tell: (row: R) => z.input<S>;
}): Resource {
  const { name, one, about, schema, filters = {}, rows, tell } = of;
  return {
    ...{ name, one, about, schema, filters },
    read: async (context, where, page, asked) =>
      (await rows(context, where, page, asked)).map((row) => ({
        id: row.id,
        revision: row.revision,
        body: tell(row),
      })),
  };
}

/** One row as a script reads it; undefined when it is not there or not the actor's. */
export async function readOne(
  context: ReadContext,
  kind: Resource,
  id: string,
): Promise<ToldRow | undefined> {
  const [row] = await kind.read(context, { id }, { orderBy: { id: 'asc' }, take: 1 }, {});
  return row;
}

/** How every record is told to begin with. */
export const identity = {
  id: z.uuid(),
  revision: z.int().min(1).describe('Raised by every change; also the ETag.'),
};
/** Why a record was taken out of every figure; null while it counts. */
export const voided = z.string().nullable().describe('Why it was voided; null while it counts.');
export const voidedOf = (row: { readonly voidedAt: Date | null; readonly voidReason: string | null }) =>
  row.voidedAt === null ? null : (row.voidReason ?? '');

export const date = z.iso.date();
export const instant = z.iso.datetime();
export const id = z.uuid();
export const note = z.string().nullable();
