import type { Entry } from '@/lib/offline/entry';
import type { FormState } from '../form/field-spec';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const dayFields = ['weighedOn', 'foundOn', 'checkedOn', 'lookedOn', 'lostOn'];

function put(values: Record<string, string>, name: string, value: unknown): void {
  if (Array.isArray(value)) {
    value.forEach((row, at) => {
      put(values, `${name}.${at}`, row);
    });
    return;
  }
  if (isObject(value)) {
    if (typeof value.text === 'string' && typeof value.unit === 'string') {
      values[name] = value.text;
      values[`${name}__unit`] = value.unit;
      return;
    }
    for (const [part, inner] of Object.entries(value))
      put(values, name === '' ? part : `${name}.${part}`, inner);
    return;
  }
  if (typeof value !== 'string' && typeof value !== 'number') return;
  const text = String(value);
  const day = dayFields.includes(name) ? /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) : null;
  if (day === null) {
    values[name] = text;
    return;
  }
  values[`${name}__quick`] = 'other';
  values[`${name}__day`] = String(Number(day[3]));
  values[`${name}__month`] = String(Number(day[2]));
  values[`${name}__year`] = day[1] ?? '';
}

/** What the boxes of an entry's form hold, so that it can be changed before it is sent. */
export function formValuesOf(entry: Entry): FormState['values'] {
  const values: Record<string, string> = {};
  // A look is written on the form of a check.
  const { lookedOn, ...rest } = entry.input;
  const look = entry.kind === 'look' ? { kind: 'all_clean', checkedOn: lookedOn } : {};
  put(values, '', { ...rest, ...look });
  return values;
}
