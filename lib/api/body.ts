import { z } from 'zod';
import { scriptShapeOf } from '@/lib/records/fields/script-shape';

type Raw = Record<string, unknown>;

/** The body of a write as a script sends it, made from the input of the command that runs. */
export type ApiBody = {
  /** Strict: names with their units, no text for a number, nothing unknown. */
  readonly json: z.ZodObject;
  /** What was sent, under the names that the command's input has. */
  toInput(sent: Readonly<Raw>): Raw;
  /** Where a field of the input stands in what was sent: `lines.0.fresh` is `/lines/0/freshGrams`. */
  pointerOf(field: string): string;
};

function fieldsOf(input: z.core.$ZodType): Readonly<Record<string, z.core.$ZodType>> {
  if (input instanceof z.ZodPipe) return fieldsOf(input.def.in);
  if (input instanceof z.ZodObject) return input.shape;
  throw new Error('An input of a command is an object');
}

type Part = { readonly sent: string; readonly json: z.ZodType; readonly rows: ApiBody | undefined };

function partOf(name: string, field: z.core.$ZodType): Part {
  const shape = scriptShapeOf(field);
  if (shape === undefined) throw new Error(`The field ${name} does not say what it takes from a script`);
  const { takes, required } = shape;
  const rows = 'rows' in takes ? objectBody(takes.rows, []) : undefined;
  const json = 'rows' in takes ? z.array(objectBody(takes.rows, []).json).max(takes.most) : takes.json;
  const unit = 'json' in takes ? (takes.unit ?? '') : '';
  return { sent: `${name}${unit}`, json: required ? json : json.nullish(), rows };
}

function objectBody(input: z.core.$ZodType, without: readonly string[]): ApiBody {
  const parts = new Map<string, Part>();
  for (const [name, field] of Object.entries(fieldsOf(input)))
    if (!without.includes(name)) parts.set(name, partOf(name, field));
  return {
    json: z.strictObject(Object.fromEntries([...parts.values()].map(({ sent, json }) => [sent, json]))),
    toInput(sent) {
      const raw: Raw = {};
      for (const [name, part] of parts) {
        const value = sent[part.sent];
        const { rows } = part;
        raw[name] =
          rows === undefined || !Array.isArray(value) ? value : value.map((row: Raw) => rows.toInput(row));
      }
      return raw;
    },
    pointerOf(field) {
      const [first = '', ...rest] = field.split('.');
      const part = parts.get(first);
      if (field === '' || part === undefined) return field === '' ? '' : `/${field.replaceAll('.', '/')}`;
      const [index, ...inner] = rest;
      if (index === undefined) return `/${part.sent}`;
      const within =
        part.rows === undefined || inner.length === 0 ? '' : part.rows.pointerOf(inner.join('.'));
      return `/${part.sent}/${index}${within}`;
    },
  };
}

const confirmed = z
  .array(z.string().max(100))
  .max(50)
  .optional()
  .describe('Codes of questions answered with yes, as the problem that asked them names them.');

/** The body made from a command's input, without what the address or a header says. */
export function apiBody(input: z.ZodType, without: readonly string[] = []): ApiBody {
  const body = objectBody(input, without);
  return { ...body, json: body.json.extend({ confirmed }) };
}
