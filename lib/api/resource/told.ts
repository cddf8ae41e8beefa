/** Values of the database as scripts read them; null stays null. */
export const decimal = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
export const day = (value: Date) => value.toISOString().slice(0, 10);
export const dayOrNull = (value: Date | null) => (value === null ? null : day(value));
export const moment = (value: Date) => value.toISOString();
export const momentOrNull = (value: Date | null) => (value === null ? null : moment(value));
