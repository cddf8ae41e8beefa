import {
  type ColumnType,
  ColumnTypeEnum,
  type SqlDriverAdapter,
  type SqlMigrationAwareDriverAdapterFactory,
  type SqlQuery,
} from '@prisma/driver-adapter-utils';
import type { Pool } from 'pg';

/** Result types of the catalogue questions the engine asks, by type oid (pg_type.dat). */
const columnTypeByOid: Record<number, ColumnType> = {
  16: ColumnTypeEnum.Boolean,
  // "char" of the catalogues; the published pg adapter does not know it and fails on every comparison.
  18: ColumnTypeEnum.Character,
  19: ColumnTypeEnum.Text,
  20: ColumnTypeEnum.Int64,
  21: ColumnTypeEnum.Int32,
  23: ColumnTypeEnum.Int32,
  25: ColumnTypeEnum.Text,
  26: ColumnTypeEnum.Int64,
  1003: ColumnTypeEnum.TextArray,
  1009: ColumnTypeEnum.TextArray,
  1043: ColumnTypeEnum.Text,
};

const columnType = (oid: number, name: string): ColumnType => {
  const known = columnTypeByOid[oid];
  if (known === undefined) throw new Error(`catalogue column "${name}" has the unknown type oid ${oid}`);
  return known;
};

const readOnly = async (): Promise<never> => {
  throw new Error('the schema comparison only reads');
};

const adapter = (ask: SqlDriverAdapter['queryRaw']): SqlMigrationAwareDriverAdapterFactory => {
  const names = { provider: 'postgres', adapterName: 'catalogue' } as const;
  const connect = async (): Promise<SqlDriverAdapter> => ({
    ...names,
    queryRaw: ask,
    executeRaw: readOnly,
    executeScript: readOnly,
    startTransaction: readOnly,
    getConnectionInfo: () => ({ schemaName: 'public', supportsRelationJoins: true }),
    dispose: async () => {},
  });
  return { ...names, connect, connectToShadowDb: readOnly };
};

/** Lets the schema engine read the catalogues of the database behind `pool`, and nothing else. */
export const catalogueOf = (pool: Pool) =>
  adapter(async ({ sql, args }: SqlQuery) => {
    const result = await pool.query({ text: sql, values: args, rowMode: 'array' });
    return {
      columnNames: result.fields.map((field) => field.name),
      columnTypes: result.fields.map((field) => columnType(field.dataTypeID, field.name)),
      rows: result.rows,
    };
  });
