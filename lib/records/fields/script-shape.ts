import { z } from 'zod';

/** Written behind the name of a quantity, so that no script has to guess its unit. */
export type ScriptUnit = 'Grams' | 'Millilitres' | 'Millimetres' | 'SquareCentimetres';

/** What a field takes from a script: plain JSON, strict and describable, where a form sends what a person typed. */
export type ScriptJson = { readonly json: z.ZodType; readonly unit?: ScriptUnit };

/** A list of objects of further fields. */
export type ScriptRows = { readonly rows: z.ZodType; readonly most: number };

class ScriptShape {
  constructor(
    readonly required: boolean,
    readonly takes: ScriptJson | ScriptRows,
  ) {}
}

/** The shape of each field; what is derived from a field by a further check keeps it. */
export const scriptShapes = z.registry<{ readonly shape: unknown }>();

/** Of a field that must be given. */
export function alwaysTakes(takes: ScriptJson) {
  return { shape: new ScriptShape(true, takes) };
}

/** Of a field that may be left out. */
export function mayTake(takes: ScriptJson | ScriptRows) {
  return { shape: new ScriptShape(false, takes) };
}

/** What a field takes; undefined for a schema that is no field of a form. */
export function scriptShapeOf(field: z.core.$ZodType): ScriptShape | undefined {
  const shape = scriptShapes.get(field)?.shape;
  return shape instanceof ScriptShape ? shape : undefined;
}
