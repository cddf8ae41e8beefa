import type { Operation } from '../operation/operation';
import { operations } from '../operation/operations';
import { jsonSchema } from './json-schema';

export type GuideField = {
  readonly name: string;
  /** As the forms of its area call it. */
  readonly field: string;
  /** JSON type with its format or limits, such as `integer 1-100000`; the words of a choice. */
  readonly type: string;
  readonly required: boolean;
};

export type GuideOperation = {
  readonly name: string;
  /** What it does, the same word for all kinds: `list`, `create`, `close`; of figures its own name. */
  readonly verb: string;
  readonly method: string;
  readonly path: string;
  readonly ifMatch: boolean;
  readonly area: string;
  readonly query: readonly GuideField[];
  readonly body: readonly GuideField[];
};

export type GuideSection = { readonly kind: string; readonly operations: readonly GuideOperation[] };

type Schema = {
  readonly type?: string;
  readonly format?: string;
  readonly enum?: readonly string[];
  readonly const?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
};

const widest = Number.MAX_SAFE_INTEGER;

function typeOf(schema: Schema): string {
  const either = (schema.anyOf ?? schema.oneOf ?? []).filter(({ type }) => type !== 'null');
  if (either.length > 0) return either.map(typeOf).join(' | ');
  if (schema.enum) return schema.enum.join(' | ');
  if (schema.const !== undefined) return schema.const;
  if (schema.type === 'array') return `[${schema.items === undefined ? '' : typeOf(schema.items)}]`;
  if (schema.format !== undefined) return schema.format;
  const { minimum, maximum, type = '' } = schema;
  const from = minimum === undefined || minimum <= -widest ? undefined : minimum;
  const to = maximum === undefined || maximum >= widest ? undefined : maximum;
  if (from === undefined && to === undefined) return type;
  return `${type} ${from ?? ''}…${to ?? ''}`;
}

/** Fields in the order in which they are described; those of a list follow it, indented by its name. */
function fieldsOf(schema: Schema, within = ''): GuideField[] {
  return Object.entries(schema.properties ?? {}).flatMap(([key, given]) => {
    const name = `${within}${key}`;
    const list = [given, ...(given.anyOf ?? [])].find(({ type }) => type === 'array')?.items;
    const rows = list?.properties === undefined ? [] : fieldsOf(list, `${name}[].`);
    const field = name.replaceAll('[]', '').replace(/(Grams|Millilitres|Millimetres|SquareCentimetres)$/, '');
    const required = (schema.required ?? []).includes(key);
    return [{ name, field, type: rows.length > 0 ? '[{…}]' : typeOf(given), required }, ...rows];
  });
}

function verbOf({ name, tag }: Operation): string {
  return tag === 'figures' ? name : (/^[a-z]+/.exec(name)?.[0] ?? name);
}

/** What the page about the API says of each operation, by kind of record in the order of the list. */
export function apiGuide(): readonly GuideSection[] {
  const kinds = [...new Set(operations.map(({ tag }) => tag))];
  return kinds.map((kind) => ({
    kind,
    operations: operations
      .filter(({ tag }) => tag === kind)
      .map((operation) => ({
        name: operation.name,
        verb: verbOf(operation),
        method: operation.method,
        path: operation.path,
        ifMatch: operation.method !== 'GET' && operation.ifMatch,
        area: operation.area,
        query: operation.method === 'GET' ? fieldsOf(jsonSchema(operation.query, 'input')) : [],
        body: operation.method === 'GET' ? [] : fieldsOf(jsonSchema(operation.body.json, 'input')),
      })),
  }));
}
