import { Prisma } from './generated/client';

/**
 * A part of a statement with its values, to be put into others. Only whoever holds the database of an actor can run one.
 * Values are always sent apart from the text.
 */
export type Sql = Prisma.Sql;

export const sql = Prisma.sql;

/** Parts one after another with a text of ours between them. */
export const joinSql = Prisma.join;

export const noSql = Prisma.empty;
