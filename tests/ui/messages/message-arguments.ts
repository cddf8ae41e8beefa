import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';

/** All leaf texts of a catalogue by dotted key. */
export function leaves(tree: object, at = ''): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [key, value] of Object.entries(tree)) {
    const path = at === '' ? key : `${at}.${key}`;
    if (typeof value === 'string') found.set(path, value);
    else for (const [inner, text] of leaves(value as object, path)) found.set(inner, text);
  }
  return found;
}

function collect(elements: readonly MessageFormatElement[], into: Set<string>): void {
  for (const element of elements) {
    if (element.type === TYPE.literal || element.type === TYPE.pound) continue;
    into.add(element.value);
    if (element.type === TYPE.plural || element.type === TYPE.select) {
      for (const option of Object.values(element.options)) collect(option.value, into);
    }
    if (element.type === TYPE.tag) collect(element.children, into);
  }
}

/** Names of the arguments that an ICU message takes, sorted. Throws when the message cannot be read. */
export function messageArguments(message: string): readonly string[] {
  const names = new Set<string>();
  collect(parse(message), names);
  return [...names].sort();
}
