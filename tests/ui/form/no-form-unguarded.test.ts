import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../../..');
const sources = ['app', 'lib/ui'].flatMap((folder) =>
  readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.tsx'))
    .map((file) => ({
      file: path.join(folder, file),
      text: readFileSync(path.join(root, folder, file), 'utf8'),
    })),
);
const telling = sources.filter(({ text }) => text.includes('useActionState('));

test('every form that tells what came of it also tells where no answer came', () => {
  expect(telling.length).toBeGreaterThan(4);
  const guarded = /useActionState\(\s*unlessNo(Signal|Answer)\(/;
  expect(telling.filter(({ text }) => !guarded.test(text)).map(({ file }) => file)).toEqual([]);
});

test('every form that posts to a handler is one that sends from the page', () => {
  const posting = sources.filter(({ text }) => /method="post"/i.test(text));
  expect(posting.map(({ file }) => file)).toEqual(['lib/ui/form/file-form.tsx']);
});

test('a form that goes straight to an action holds nothing that anybody typed', () => {
  const straight = sources
    .filter((source) => !telling.includes(source))
    .flatMap(({ file, text }) => [...text.matchAll(/<form\b.*?<\/form>/gs)].map(([form]) => ({ file, form })))
    .filter(({ form }) => !/method="/.test(form));
  expect(straight.length).toBeGreaterThan(5);
  const typed = /<(Field|textarea|select)\b|<input\b(?! type="hidden")/;
  expect(straight.filter(({ form }) => typed.test(form)).map(({ file }) => file)).toEqual([]);
});
