import { describe, expect, test } from 'vitest';
import type { Language } from '@/lib/database/generated/enums';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { leaves } from './message-arguments';

/** Things that are counted, in the plural, and "of them", which wants a plural as well. */
const counted: Readonly<Record<'en' | 'es', string>> = {
  en: 'arms|bags|batches|beds|characters|columns|crates|days|entries|files|findings|harvests|hours|labels|lines|losses|looks|lots|members|methods|minutes|months|people|photos|readings|records|rows|runs|sales|signals|sites|stories|tables|texts|things|tokens|treatments|trials|units|weeks|weighings|years',
  es: 'años|archivos|bolsas|brazos|cajas|caracteres|columnas|cosechas|de ellas|de ellos|días|ensayos|entradas|etiquetas|filas|fotos|hallazgos|historias|horas|lecturas|letras|líneas|lotes|meses|métodos|miembros|minutos|personas|pesadas|pérdidas|registros|revisiones|semanas|señales|sitios|tablas|tareas|textos|tokens|tratamientos|trozos|unidades|ventas',
};

/** Sentences that say a plural of a number which never is one, and why it is not. */
const neverOne: ReadonlySet<string> = new Set([
  // Limits set in the code or as constants, all above one.
  ...['too-long', 'too-short', 'password-short', 'password-long', 'too-many-photos', 'too-many-labels'].map(
    (code) => `errors.${code}`,
  ),
  ...['errors.enough-stories', 'errors.too-far', 'errors.table-too-long', 'import.new.fileHint'],
  ...[
    'insight.methods.curvesNote',
    'insight.site.chartNote',
    'insight.site.signalled',
    'today.open.latestOnly',
    'insight.costs.tooMany',
    'insight.methods.useMost',
    'watch.records.mostSites',
    'watch.watch.latestRecords',
    'trials.known.drawn',
  ],
  ...['report.howProtected', 'report.changes.carriedBefore', 'report.carried'],
  // Said of several sites or arms, so of several runs and units.
  ...['insight.treatments.whereMany', 'trials.size.needs', 'trials.result.design'],
  // A long list of batches.
  'quick.batch.all',
  // A difference with its decimals.
  ...['trials.result.more.contamination', 'trials.result.fewer.contamination'],
]);

/** Keys of sentences in which a number stands before a plural that does not bend with it. */
function unbent(texts: ReadonlyMap<string, string>, language: 'en' | 'es'): string[] {
  const number = new RegExp(
    `\\{\\w+(?:, number)?\\}(?:[\\s\\u00a0]+[\\p{L}-]+)?[\\s\\u00a0]+(?:${counted[language]})(?![\\p{L}])`,
    'iu',
  );
  return [...texts]
    .filter(([key, text]) => number.test(text) && !key.endsWith('.other') && !neverOne.has(key))
    .map(([key, text]) => `${key}: ${text}`);
}

describe('What is counted bends with its number', () => {
  test.each<Language>(['en', 'es'])('in every sentence (%s)', (language) => {
    expect(unbent(leaves(loadMessages(language)), language)).toEqual([]);
  });

  test('and a sentence that does not is found', () => {
    expect(unbent(new Map([['watch.effect', '{of} of {due} batches are left out']]), 'en')).toHaveLength(1);
    expect(unbent(new Map([['watch.effect', 'De {due, number} lotes faltan']]), 'es')).toHaveLength(1);
    expect(unbent(new Map([['it', '{due, plural, one {# batch} other {# batches}}']]), 'en')).toEqual([]);
  });
});
