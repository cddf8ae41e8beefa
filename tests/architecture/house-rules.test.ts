import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const source = /[.](ts|tsx|mjs|cjs|css|sql)$/;

const filesIn = (folder: string): string[] =>
  readdirSync(path.join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && source.test(entry.name))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .filter((file) => !file.startsWith('lib/database/generated/'));

const folders = readdirSync(root).filter((name) => ['app', 'lib', 'seed', 'tests'].includes(name));
const files = folders.flatMap(filesIn).sort();
const code = files.filter((file) => /[.](ts|tsx|mjs)$/.test(file));
const ours = code.filter((file) => !file.startsWith('tests/'));
const text = (file: string) => readFileSync(path.join(root, file), 'utf8');
const lines = (file: string) => text(file).split('\n').length - 1;

/** The names of a path's folders and of the file without its endings. */
const names = (file: string) => file.split('/').map((part) => part.replace(/[.].*$/, ''));

const startsOnServer = (file: string) =>
  /[.](query|queries|command|commands)[.]ts$/.test(file) ||
  ['lib/access/scoped-db.ts', 'lib/database/client.ts'].includes(file);

describe('the files of this project', () => {
  it('are found', () => {
    expect(ours.length).toBeGreaterThan(100);
  });

  it('have at most 250 lines each', () => {
    expect(files.filter((file) => lines(file) > 250)).toEqual([]);
  });

  it('are short as a rule: half of them at most 60 lines, nine in ten at most 150', () => {
    const sizes = ours.map(lines).sort((a, b) => a - b);
    expect(sizes[Math.floor(sizes.length * 0.5)]).toBeLessThanOrEqual(60);
    expect(sizes[Math.floor(sizes.length * 0.9)]).toBeLessThanOrEqual(150);
  });

  it('are named for what they hold, never utils, helpers, common, misc, types or index', () => {
    const vague = /^(utils?|helpers?|common|misc|types|index|shared)$/;
    expect(files.filter((file) => names(file).some((name) => vague.test(name)))).toEqual([]);
  });

  it('are named in kebab case, apart from the brackets of routes', () => {
    const bracketed = /^(\([a-z-]+\)|\[+([.]{3})?[a-zA-Z-]+\]+)$/;
    const kebab = /^_?[a-z0-9]+([-.][a-z0-9]+)*$/;
    const isWell = (part: string) => bracketed.test(part) || kebab.test(part);
    expect(files.filter((file) => !file.split('/').every(isWell))).toEqual([]);
  });

  it('never only pass on what other files export', () => {
    const comments = /\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm;
    const passedOn = /^\s*export\s+(type\s+)?(\*|\{[^}]*\})(\s+as\s+\w+)?\s+from\s+'[^']*';/gm;
    const isBarrel = (file: string) => {
      const body = text(file).replace(comments, '');
      return passedOn.test(body) && body.replace(passedOn, '').trim() === '';
    };
    expect(ours.filter(isBarrel)).toEqual([]);
  });

  it('switch off no check', () => {
    const switchesOff = /@ts-(ignore|expect-error|nocheck)|biome-ignore|\bas any\b|\b(TODO|FIXME)\b/;
    const own = 'tests/architecture/house-rules.test.ts';
    expect(code.filter((file) => file !== own && switchesOff.test(text(file)))).toEqual([]);
  });

  it('remove the directories that they make for temporary files', () => {
    // Who makes one for phones in a storm hands it to a place that removes it when it ends.
    const removes = /\brm(Sync)?\(|\b(growingPlace|nemesisPlace)\(\s*mkdtemp/;
    const makers = code.filter((file) => /mkdtemp(Sync)?\(\s*(path\.)?join\(tmpdir\(\)/.test(text(file)));
    expect(makers.length).toBeGreaterThan(5);
    expect(makers.filter((file) => !removes.test(text(file)))).toEqual([]);
  });

  it('skip no test', () => {
    const skips = /\b(it|test|describe)[.](skip|only|todo|fixme)\b/;
    expect(code.filter((file) => skips.test(text(file)))).toEqual([]);
  });
});

describe('files that must stay on the server', () => {
  it('exist', () => {
    expect(ours.filter(startsOnServer).length).toBeGreaterThan(1);
  });

  it('begin with the marker that keeps them out of a browser', () => {
    const marked = /^(?:\/\*\*[\s\S]*?\*\/\s*|\/\/[^\n]*\n)*import 'server-only';/;
    expect(ours.filter((file) => startsOnServer(file) && !marked.test(text(file)))).toEqual([]);
  });
});

describe('files that must load in a browser', () => {
  const forBrowser = (file: string) =>
    /^lib\/(stats|growing|offline)\//.test(file) ||
    /[.]input[.]ts$/.test(file) ||
    /^lib\/base\/(errors|result)[.]/.test(file);

  it('have no marker of the server and use nothing of Node', () => {
    const serverOnly = /import 'server-only'|from 'node:|\bprocess[.]|\bBuffer[.]/;
    expect(ours.filter((file) => forBrowser(file) && serverOnly.test(text(file)))).toEqual([]);
  });
});
