import type { FieldChoices } from './field-choices';
import { plainWords } from './plain-words';

const wordsOf = (text: string) =>
  plainWords(text)
    .split(' ')
    .filter((word) => word.length > 2);

/** The records to choose from with those first that are of what the text names, such as lots of straw under "wheat straw". */
export function likelyFirst(text: string, choices: FieldChoices | undefined): FieldChoices | undefined {
  if (choices?.kind !== 'records') return choices;
  const said = wordsOf(text);
  const shared = (names: readonly string[] = []) =>
    Math.max(0, ...names.map((name) => wordsOf(name).filter((word) => said.includes(word)).length));
  const options = choices.options.map((option) => ({ option, words: shared(option.names) }));
  return {
    kind: 'records',
    options: options.sort((a, b) => b.words - a.words).map(({ option }) => option),
  };
}
