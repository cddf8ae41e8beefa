/** What a form posted, nested by its dotted names; every leaf is the text as typed. */
export type Posted = { [key: string]: Posted | string | string[] };

const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Nests `lines.0.fresh` and joins companion fields: `fresh` with `fresh__unit` becomes `{ text, unit }`;
 * `on__quick`, `on__day`, `on__month`, `on__year`, `on__time` become `{ quick, day, month, year, time }`.
 */
export function formToObject(data: FormData): Posted {
  const root: Posted = Object.create(null) as Posted;
  for (const name of new Set(data.keys())) {
    if (name.startsWith('$ACTION')) continue;
    const texts = data.getAll(name).filter((value): value is string => typeof value === 'string');
    const [path = '', companion] = name.split('__');
    if (path.split('.').some((part) => forbidden.has(part)) || path === '') continue;
    const value = texts.length > 1 ? texts : (texts[0] ?? '');
    if (companion === undefined && data.has(`${name}__unit`)) place(root, `${path}.text`, value);
    else if (companion === undefined) place(root, path, value);
    else if (!forbidden.has(companion)) place(root, `${path}.${companion}`, value);
  }
  return root;
}

/** The same for an address: its filters are posted by a form, too. */
export function queryToObject(query: Readonly<Record<string, string | string[] | undefined>>): Posted {
  const data = new FormData();
  for (const [name, value] of Object.entries(query))
    for (const text of [value].flat()) if (text !== undefined) data.append(name, text);
  return formToObject(data);
}

function place(root: Posted, path: string, value: string | string[]): void {
  const parts = path.split('.');
  const last = parts.pop() ?? path;
  let node = root;
  for (const part of parts) {
    const next = node[part];
    if (typeof next === 'object' && !Array.isArray(next)) {
      node = next;
    } else {
      const made = Object.create(null) as Posted;
      node[part] = made;
      node = made;
    }
  }
  node[last] = value;
}
