import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { leaves, messageArguments } from './message-arguments';

const english = leaves(loadMessages('en'));
const spanish = leaves(loadMessages('es'));

describe('the catalogues', () => {
  test('have the same keys in English and Spanish', () => {
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  });

  test('take the same arguments in English and Spanish, and every message can be read', () => {
    const differing = [...english].flatMap(([key, text]) => {
      const there = messageArguments(spanish.get(key) ?? '');
      return messageArguments(text).join() === there.join()
        ? []
        : [`${key}: ${messageArguments(text)} | ${there}`];
    });
    expect(differing).toEqual([]);
  });

  test('leave no text empty', () => {
    const empty = [...english, ...spanish].filter(([, text]) => text.trim() === '').map(([key]) => key);
    expect(empty).toEqual([]);
  });

  test('name fields as inside a sentence, for refusals write them there', () => {
    const capital = [...english, ...spanish].filter(
      ([key, text]) => /^\w+\.fields\./.test(key) && /^\p{Lu}\p{Ll}/u.test(text),
    );
    expect(capital).toEqual([]);
  });

  test('are all loaded: each file of a language is an area', () => {
    for (const language of ['en', 'es'] as const) {
      const files = readdirSync(path.join(import.meta.dirname, '../../../lib/ui/messages', language));
      expect(Object.keys(loadMessages(language)).sort()).toEqual(
        files.map((file) => path.parse(file).name).sort(),
      );
    }
  });

  test('hold enough that the comparison means something', () => {
    expect(english.size).toBeGreaterThan(250);
  });
});
