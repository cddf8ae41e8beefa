import { z } from 'zod';
import { operations } from '../operation/operations';
import { comparisonSchema, figureSchema } from '../resource/figure';

export type JsonSchema = Readonly<Record<string, unknown>>;

/** Schemas that the document names once; operations refer to them. */
const named = new Map<z.core.$ZodType, string>([[figureSchema, 'Figure']]);

function nameOf(tag: string): string {
  return tag.replace(/(^|-)([a-z])/g, (_all, _dash, letter: string) => letter.toUpperCase());
}
for (const operation of operations)
  if (operation.method === 'GET' && operation.of === 'one')
    named.set(operation.answer, `${nameOf(operation.tag)}Record`);
named.set(comparisonSchema, 'Comparison');

/** A schema as JSON Schema 2020-12, which OpenAPI 3.1 takes; what the document names is referred to. */
export function jsonSchema(schema: z.ZodType, io: 'input' | 'output'): JsonSchema {
  const { $schema: _dialect, ...told } = z.toJSONSchema(schema, {
    io,
    target: 'draft-2020-12',
    reused: 'inline',
    override({ zodSchema, jsonSchema: made }) {
      const name = named.get(zodSchema);
      if (name === undefined || Object.is(zodSchema, schema)) return;
      for (const key of Object.keys(made)) delete made[key];
      made.$ref = `#/components/schemas/${name}`;
    },
  });
  return told;
}

/** A reference to a named schema, or the schema itself. */
export function answerSchema(schema: z.ZodType): JsonSchema {
  const name = named.get(schema);
  return name === undefined ? jsonSchema(schema, 'output') : { $ref: `#/components/schemas/${name}` };
}

export function namedSchemas(): Readonly<Record<string, JsonSchema>> {
  return Object.fromEntries(
    [...named].map(([schema, name]) => [name, jsonSchema(schema as z.ZodType, 'output')]),
  );
}
