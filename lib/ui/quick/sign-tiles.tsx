import { contaminationSigns } from '@/lib/growing/contamination-signs';
import type { FieldContext } from '../form/field-context';
import { ChoiceTiles } from './choice-tiles';
import { fillPlaces } from './fill-places';
import type { QuickProps } from './quick-props';

/** What one sees or smells, as large choices. What it often turns out to be is named after the choice, not before. */
export function SignTiles({ props, context }: { props: QuickProps; context: FieldContext }) {
  const { words, snapshot } = props;
  const { language } = snapshot.person;
  const tiles = contaminationSigns.map(({ sign, looksLike }) => {
    const group = looksLike
      .map(({ name, genera }) => `${name[language].toLocaleLowerCase()} (${genera.join(', ')})`)
      .join(words.finding.or);
    const tile = { value: sign, label: words.sign[sign] };
    return group === '' ? tile : { ...tile, after: fillPlaces(words.finding.looksLike, { group }) };
  });
  return <ChoiceTiles name="sign" label={words.fields.sign} tiles={tiles} context={context} two />;
}
