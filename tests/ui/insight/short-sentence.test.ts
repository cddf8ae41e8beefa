import { expect, test } from 'vitest';
import type { ShortMethod } from '@/lib/analysis/treatment-question/short-methods';
import {
  fermentWindowDefault,
  hotWaterWindowDefault,
  limeWindowDefault,
} from '@/lib/growing/method-defaults';
import { shortSentence } from '@/lib/ui/insight/short-sentence';
import { sentenceWords } from './sentence-words';

const short: ShortMethod = {
  methodId: 'hot-water bath',
  window: hotWaterWindowDefault,
  judged: 35,
  outside: 35,
  unknown: 0,
  heldMinutes: 44.9,
  latestHeld: false,
};
const [english, spanish] = [sentenceWords('en'), sentenceWords('es')];
const plain = (text: string) => text.replace(/\u00a0/g, ' ');
const said = (changes: Partial<ShortMethod>) =>
  plain(shortSentence({ ...short, ...changes }, 'celsius', english));

test('a bath that none of a site’s runs held is said with its latest run, before anything else is advised', () => {
  expect(said({})).toBe(
    'None of this site’s last 35 runs of hot-water bath, whatever they filled, held its window (the latest: 44 of 60 minutes between 65.6 °C and 82.2 °C). Hold it in full before anything else; mind hot water, steam and flame, and follow your local rules.',
  );
});

test('the same in Spanish and in Fahrenheit', () => {
  expect(plain(shortSentence(short, 'fahrenheit', spanish))).toBe(
    'Ninguno de los últimos 35 tratamientos con hot-water bath de este sitio, sea cual sea el recipiente, se mantuvo en su ventana (el último: 44 de 60 minutos entre 150 °F y 180 °F). Antes que nada, mantenga en ella el tratamiento todo el tiempo; cuidado con el agua caliente, el vapor y el fuego, y siga las normas locales.',
  );
});

test('what the readings of some runs do not tell is said, and a run that held since is not told to be held', () => {
  expect(said({ outside: 20, unknown: 2, latestHeld: true })).toBe(
    'Of this site’s last 35 runs of hot-water bath, whatever they filled, 20 did not hold their window (the latest of them: 44 of 60 minutes between 65.6 °C and 82.2 °C). 2 more cannot be judged: their readings do not tell. The latest run held it: keep to that.',
  );
});

test('a time that fell short by a hair is never written as enough', () => {
  expect(said({ heldMinutes: 59.99 })).toContain('59 of 60 minutes');
  expect(said({ window: limeWindowDefault, heldMinutes: 359.9 })).toContain('5.9 of 6 hours; where pH was');
  expect(said({ window: fermentWindowDefault, heldMinutes: 4.49 * 1440 })).toContain('4.4 of 5 days under');
});
