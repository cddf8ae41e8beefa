import { type MessageFormatElement, parse, TYPE } from '@formatjs/icu-messageformat-parser';
import { describe, expect, test } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { leaves } from './message-arguments';

/** What a sentence says where everything it counts is one. */
function saidOfOne(elements: readonly MessageFormatElement[]): string {
  return elements
    .map((element) => {
      switch (element.type) {
        case TYPE.literal:
          return element.value;
        case TYPE.pound:
          return '1';
        case TYPE.plural:
          return saidOfOne(
            (element.options['=1'] ?? element.options.one ?? element.options.other)?.value ?? [],
          );
        case TYPE.select:
          return saidOfOne(element.options.other?.value ?? []);
        case TYPE.tag:
          return saidOfOne(element.children);
        default:
          return `{${element.value}}`;
      }
    })
    .join('');
}

/** In Spanish: a verb of many before or after "1" within its clause, or a word of many right after it. */
const ofMany = [
  /(?<![\p{L}\d,.])1 (?:(?!(?:cuando|donde|que) )[^\s.,;:]+ ){0,7}?\p{L}+(?:rían|aban|ían|aron|ieron|arán|erán)(?!\p{L})/u,
  /(?<!\p{L})\p{L}+(?:rían|aban|ían|aron|ieron|arán|erán) (?:unos )?1(?!\d)/u,
  /(?<![\p{L}\d,.])1 \p{L}+[aeo]s(?!\p{L})/u,
];

const disagreeing = (texts: ReadonlyMap<string, string>): string[] =>
  [...texts].flatMap(([key, text]) => {
    const said = saidOfOne(parse(text));
    return text.includes(', plural') && ofMany.some((form) => form.test(said)) ? [`${key}: ${said}`] : [];
  });

describe('What is said of one in Spanish is not said of many', () => {
  test('in every sentence that counts', () => {
    expect(disagreeing(leaves(loadMessages('es')))).toEqual([]);
  });

  test('and a sentence that does is found', () => {
    const found = (text: string) => disagreeing(new Map([['it', text]])).length;
    expect(found('Ni {n, plural, one {# lote de cultivo más} other {# lotes más}} aquí reducirían {a}')).toBe(
      1,
    );
    expect(
      found('Ni {n, plural, one {# lote más aquí reduciría} other {# lotes más aquí reducirían}} {a}'),
    ).toBe(0);
    expect(found('{n, plural, =0 {} other {; se contaron # más}}')).toBe(1);
    expect(found('{n, plural, =0 {, ninguno corto} other {, # cortos}}')).toBe(1);
  });
});
