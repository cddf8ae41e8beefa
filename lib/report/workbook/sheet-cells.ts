export type SheetCell = {
  readonly value: string | number;
  readonly type: StringConstructor | NumberConstructor;
  readonly fontWeight?: 'bold';
  readonly wrap?: true;
  readonly alignVertical?: 'top';
};

export const boldCell = (value: string): SheetCell => ({
  value,
  type: String,
  fontWeight: 'bold',
  wrap: true,
  alignVertical: 'top',
});

/** Given as text, so that words which begin like a formula stay words. */
export const textCell = (value: string): SheetCell => ({
  value,
  type: String,
  wrap: true,
  alignVertical: 'top',
});

/** A figure unrounded; nothing where there is none. */
export const numberCell = (value: number | undefined): SheetCell | null =>
  value === undefined ? null : { value, type: Number, alignVertical: 'top' };
